import type { Day } from '../../../shared/kernel/day.ts';
import type { Id } from '../../../shared/kernel/id.ts';

/** One move of a queen; `colonyId` is null when she went anywhere but into a hive. */
export interface PedigreeMove {
  readonly queenId: Id;
  readonly on: Day;
  readonly colonyId: Id | null;
}

/** A queen at the head of a hive, from a day on, up to but not including `until`; null = to this day. */
export interface HiveStay {
  readonly queenId: Id;
  readonly colonyId: Id;
  readonly from: Day;
  readonly until: Day | null;
}

/**
 * When which queen headed which hive. A stay ends with her own next move, or when another queen is brought to the hive.
 * Moves may come in any order; of two on one day the later in the list is the later.
 */
export function hiveStays(moves: readonly PedigreeMove[]): readonly HiveStay[] {
  const ordered = moves.toSorted((a, b) => a.on - b.on);
  return ordered.flatMap(({ queenId, colonyId, on }, index) => {
    if (colonyId === null) return [];
    const end = ordered
      .slice(index + 1)
      .find((later) => later.queenId === queenId || (later.colonyId === colonyId && later.queenId !== queenId));
    return [{ queenId, colonyId, from: on, until: end?.on ?? null }];
  });
}

/** The queen that headed a hive on a day, or null where none with a number is known to have. */
export function headOn(stays: readonly HiveStay[], colonyId: Id, on: Day): Id | null {
  const stay = stays.find(
    (one) => one.colonyId === colonyId && one.from <= on && (one.until === null || on < one.until),
  );
  return stay?.queenId ?? null;
}
