import type { Id } from '../../../shared/kernel/id.ts';
import type { CountedStage } from '../../../shared/model/batch.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import { type PlacementHistory, placementOutcome } from './placement-outcome.ts';

/** The counts of one bar; a stage that is missing was not counted. */
export type BarCountsByStage = Partial<Record<CountedStage, number>>;

/**
 * Adds a batch up, stage by stage. A sum over bars is known only when every bar was counted at that stage: one bar not
 * counted makes the sum unknown, not smaller. Taken cells nobody removed went on to sealing all of them.
 */
export function batchTally(
  batchId: Id,
  bars: readonly BarCountsByStage[],
  placements: readonly PlacementHistory[],
): BatchTally {
  const taken = sumOf(bars, 'taken');
  const removed = bars.reduce((sum, bar) => sum + (bar.removed ?? 0), 0);
  const outcomes = placements.map(placementOutcome);
  const emerged = outcomes.filter((outcome) => outcome.emerged === true);
  return {
    batchId,
    given: sumOf(bars, 'given'),
    taken,
    enteredSealing: taken === null ? null : taken - removed,
    sealed: sumOf(bars, 'sealed'),
    placed: placements.length,
    emergenceKnown: outcomes.filter((outcome) => outcome.emerged !== null).length,
    emerged: emerged.length,
    matingKnown: emerged.filter((outcome) => outcome.mated !== null).length,
    proved: emerged.filter((outcome) => outcome.mated === true).length,
    laying: outcomes.filter((outcome) => outcome.laying).length,
  };
}

function sumOf(bars: readonly BarCountsByStage[], stage: CountedStage): number | null {
  if (bars.length === 0) return null;
  let sum = 0;
  for (const bar of bars) {
    const cells = bar[stage];
    if (cells === undefined) return null;
    sum += cells;
  }
  return sum;
}

/** A batch of which nothing is known. */
export const emptyTally = (batchId: Id): BatchTally => batchTally(batchId, [], []);
