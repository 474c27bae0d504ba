import { convolve } from './convolve.ts';
import { type CountSummary, summariseCount } from './count-summary.ts';
import { certain, funnel, stageTable } from './funnel.ts';
import { type Believe, believe, type CountedStageGroups } from './plan-queens.ts';

/** A stage still ahead of a batch. */
export interface StageAhead extends Pick<CountedStageGroups, 'groups' | 'group'> {
  /** Known to enter this stage beside those who come out of the one before. */
  readonly joining: number;
}

export interface ExpectAsk {
  /** How many enter the first stage ahead (its own `joining` counted in). */
  readonly of: number;
  readonly stages: readonly StageAhead[];
  /** Known to have come through already. */
  readonly already: number;
}

/**
 * What comes out of the stages ahead of one batch. What is in a stage at one time goes through it as one lot, so that
 * the batch is good or bad together.
 */
export function expectBatch({ of, stages, already }: ExpectAsk, beliefOf: Believe = believe): CountSummary {
  let chances = certain(of);
  stages.forEach((stage, index) => {
    const entered = index === 0 ? chances : convolve(chances, certain(stage.joining));
    const table = stageTable(beliefOf(stage).nodes, entered.length - 1);
    const next = new Float64Array(entered.length);
    entered.forEach((weight, n) => {
      if (weight > 0)
        funnel(n, [{ table, mostGoOn: null }]).forEach((chance, k) => {
          next[k] = (next[k] ?? 0) + weight * chance;
        });
    });
    chances = next;
  });
  return summariseCount(convolve(chances, certain(already)));
}
