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

/**
 * How close a breeder is to a hive that raises drones, as far as the register says; null where no kinship is known, which
 * is not the same as none. Daughters of a breeder mated by drones of her sister or mother are inbred by 1/8 or more
 * (coancestry of half sisters 0.125, of mother and daughter 0.25, by counting paths).
 */
export function kinshipOf(breeder: KinHive, drones: KinHive): Kinship | null {
  if (breeder.colonyId === drones.colonyId) return 'same-hive';
  const isMother = (mother: Mother | null, hive: KinHive) =>
    mother !== null && (mother.kind === 'queen' ? mother.id === hive.queenId : mother.id === hive.colonyId);
  if (isMother(breeder.mother, drones) || isMother(drones.mother, breeder)) return 'mother-daughter';
  const { mother } = breeder;
  if (mother !== null && drones.mother?.kind === mother.kind && drones.mother.id === mother.id) return 'sisters';
  const line = breeder.line?.trim().toLowerCase();
  return line && line === drones.line?.trim().toLowerCase() ? 'same-line' : null;
}
