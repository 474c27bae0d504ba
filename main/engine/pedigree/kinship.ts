import type { Id } from '../../../shared/kernel/id.ts';
import type { Kinship } from '../../../shared/model/stock.ts';
import type { Mother } from './mother-lines.ts';

/** A hive as kin: its head, her mother, and the line in the person's words; null where nothing is known. */
export interface KinHive {
  readonly colonyId: Id;
  readonly queenId: Id | null;
  readonly mother: Mother | null;
  readonly line: string | null;
}

/** What another hive is to a hive, by the queens that head them. */
export type Relation = 'mother' | 'daughter' | 'sister' | 'same-line';

/** What `other` is to `hive`, the closest first; null for the hive itself and where no kinship is known. */
export function relationOf(hive: KinHive, other: KinHive): Relation | null {
  if (hive.colonyId === other.colonyId) return null;
  if (isMother(hive.mother, other)) return 'mother';
  if (isMother(other.mother, hive)) return 'daughter';
  const { mother } = hive;
  if (mother !== null && other.mother?.kind === mother.kind && other.mother.id === mother.id) return 'sister';
  const line = hive.line?.trim().toLowerCase();
  return line && line === other.line?.trim().toLowerCase() ? 'same-line' : null;
}

const isMother = (mother: Mother | null, { queenId, colonyId }: KinHive): boolean =>
  mother !== null && mother.id === (mother.kind === 'queen' ? queenId : colonyId);

const KINSHIPS: Readonly<Record<Relation, Kinship>> = {
  mother: 'mother-daughter',
  daughter: 'mother-daughter',
  sister: 'sisters',
  'same-line': 'same-line',
};

/**
 * How close a breeder is to a hive that raises drones, as far as the register says; null where no kinship is known, which
 * is not the same as none. Daughters of a breeder mated by drones of her sister or mother are inbred by 1/8 or more
 * (coancestry of half sisters 0.125, of mother and daughter 0.25, by counting paths).
 */
export function kinshipOf(breeder: KinHive, drones: KinHive): Kinship | null {
  if (breeder.colonyId === drones.colonyId) return 'same-hive';
  const relation = relationOf(breeder, drones);
  return relation && KINSHIPS[relation];
}
