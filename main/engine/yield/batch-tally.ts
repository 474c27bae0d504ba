import type { Id } from '../../../shared/kernel/id.ts';
import { COUNTED_STAGES, type CountedStage } from '../../../shared/model/batch.ts';
import type { BarSums, BatchTally, CountSum } from '../../../shared/model/tally.ts';
import { type PlacementHistory, placementOutcome } from './placement-outcome.ts';

/** The counts of one bar; a stage that is missing was not counted. */
export type BarCountsByStage = Partial<Record<CountedStage, number>>;

/** Adds a batch up from the counts of its bars; see tallyOfSums. */
export const batchTally = (
  batchId: Id,
  bars: readonly BarCountsByStage[],
  placements: readonly PlacementHistory[],
): BatchTally => tallyOfSums(batchId, sumsOf(bars), placements);

/**
 * Adds a batch up, stage by stage. A sum over bars is known only when every bar was counted at that stage: one bar not
 * counted makes the sum unknown, not smaller. Taken cells nobody removed went on to sealing all of them.
 */
export function tallyOfSums(batchId: Id, sums: BarSums, placements: readonly PlacementHistory[]): BatchTally {
  const taken = cellsAt(sums, 'taken');
  const removed = sums.stages.removed?.cells ?? 0;
  const outcomes = placements.map(placementOutcome);
  const emerged = outcomes.filter((outcome) => outcome.emerged === true);
  return {
    batchId,
    given: cellsAt(sums, 'given'),
    taken,
    enteredSealing: taken === null ? null : taken - removed,
    sealed: cellsAt(sums, 'sealed'),
    placed: placements.length,
    emergenceKnown: outcomes.filter((outcome) => outcome.emerged !== null).length,
    emerged: emerged.length,
    matingKnown: emerged.filter((outcome) => outcome.mated !== null).length,
    proved: emerged.filter((outcome) => outcome.mated === true).length,
    laying: outcomes.filter((outcome) => outcome.laying).length,
  };
}

const cellsAt = ({ bars, stages }: BarSums, stage: CountedStage): number | null => {
  const counted = stages[stage];
  return bars > 0 && counted?.bars === bars ? counted.cells : null;
};

function sumsOf(bars: readonly BarCountsByStage[]): BarSums {
  const stages: Partial<Record<CountedStage, CountSum>> = {};
  for (const bar of bars) {
    for (const stage of COUNTED_STAGES) {
      const cells = bar[stage];
      const sofar = stages[stage] ?? { bars: 0, cells: 0 };
      if (cells !== undefined) stages[stage] = { bars: sofar.bars + 1, cells: sofar.cells + cells };
    }
  }
  return { bars: bars.length, stages };
}

/** A batch of which nothing is known. */
export const emptyTally = (batchId: Id): BatchTally => batchTally(batchId, [], []);
