import type { Day } from '../../../shared/kernel/day.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import { type HiveStay, headOn } from './hive-stays.ts';

export interface PedigreeQueen {
  readonly id: Id;
  /** Her mother as the person named her. */
  readonly motherId: Id | null;
  /** The hive her larva came from, and the day larvae were given. */
  readonly breederId: Id | null;
  readonly larvaeOn: Day | null;
}

/** A mother: a queen with a number, or a hive whose queen has none. */
export interface Mother {
  readonly kind: 'queen' | 'hive';
  readonly id: Id;
}

export interface LineNode extends Mother {
  readonly daughters: readonly LineNode[];
}

/**
 * Who a queen's mother is: the one the person named, else the queen that headed the breeder hive when the larvae were
 * given, else that hive; null when nothing is known.
 */
export function motherOf(queen: PedigreeQueen, stays: readonly HiveStay[]): Mother | null {
  if (queen.motherId !== null) return { kind: 'queen', id: queen.motherId };
  if (queen.breederId === null) return null;
  const head = queen.larvaeOn === null ? null : headOn(stays, queen.breederId, queen.larvaeOn);
  return head === null || head === queen.id ? { kind: 'hive', id: queen.breederId } : { kind: 'queen', id: head };
}

/** Whether a queen would become her own ancestor if `motherId` were her mother. */
export function isOwnAncestor(
  queenId: Id,
  motherId: Id,
  byId: ReadonlyMap<Id, PedigreeQueen>,
  stays: readonly HiveStay[],
): boolean {
  const seen = new Set<Id>();
  let at: Id | null = motherId;
  while (at !== null && !seen.has(at)) {
    if (at === queenId) return true;
    seen.add(at);
    const queen = byId.get(at);
    const mother: Mother | null = queen ? motherOf(queen, stays) : null;
    at = mother?.kind === 'queen' ? mother.id : null;
  }
  return false;
}

/**
 * All queens as trees by their mothers: roots are hives whose queen has no number, and queens of whom no mother is known.
 * Every queen stands in the forest exactly once; where a file holds a circle of mothers, it is cut at its first queen.
 */
export function motherLines(queens: readonly PedigreeQueen[], stays: readonly HiveStay[]): readonly LineNode[] {
  const byId = new Map(queens.map((queen) => [queen.id, queen]));
  const daughtersOf = new Map<string, Id[]>();
  const roots: Mother[] = [];
  for (const queen of queens) {
    const mother = motherOf(queen, stays);
    const standsAlone =
      mother === null ||
      (mother.kind === 'queen' && (!byId.has(mother.id) || isOwnAncestor(queen.id, mother.id, byId, stays)));
    if (standsAlone) roots.push({ kind: 'queen', id: queen.id });
    else {
      const key = `${mother.kind} ${mother.id}`;
      if (mother.kind === 'hive' && !daughtersOf.has(key)) roots.push(mother);
      daughtersOf.set(key, [...(daughtersOf.get(key) ?? []), queen.id]);
    }
  }
  const nodeOf = ({ kind, id }: Mother): LineNode => ({
    kind,
    id,
    daughters: (daughtersOf.get(`${kind} ${id}`) ?? []).map((daughter) => nodeOf({ kind: 'queen', id: daughter })),
  });
  return roots.map(nodeOf);
}
