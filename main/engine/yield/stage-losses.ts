import { meanRate, type RateNode } from './rate-nodes.ts';
import { ratePoints } from './rate-points.ts';

export interface StageLoss {
  /** Lost at this stage of 100 given. */
  readonly expected: number;
  /** About 9 times in 10 it lies between these. */
  readonly lower: number;
  readonly upper: number;
  readonly probabilityLargest: number;
}

export interface StageLosses {
  readonly stages: readonly StageLoss[];
  /** Coming out of the last stage of 100 given. */
  readonly layingPer100: number;
}

/**
 * Where the cells of 100 larvae are lost, and how sure it is that a stage loses the most. Stages are taken as
 * independent, so expected losses are products of mean rates; ranges come from 512 fixed settings of the rates. Early
 * stages lose many cheap larvae and late ones dear queens: show worthOfBetterStage beside it.
 */
export function stageLosses(stages: readonly (readonly RateNode[])[]): StageLosses {
  const means = stages.map(meanRate);
  const expected = lossesPer100(means);
  const settings = ratePoints(stages).map((point) => lossesPer100(point.map(({ rate }) => rate)));
  return {
    layingPer100: 100 * means.reduce((product, mean) => product * mean, 1),
    stages: expected.map((loss, stage) => {
      const sorted = settings.map((losses) => losses[stage] ?? 0).toSorted((a, b) => a - b);
      return {
        expected: loss,
        lower: sorted[Math.floor(0.05 * sorted.length)] ?? 0,
        upper: sorted[Math.ceil(0.95 * sorted.length) - 1] ?? 100,
        probabilityLargest: settings.filter((losses) => largestAt(losses) === stage).length / settings.length,
      };
    }),
  };
}

/** Queens gained per 100 given if one stage came up to `betterRate` and the others stayed; 0 when it is there already. */
export function worthOfBetterStage(means: readonly number[], stage: number, betterRate: number): number {
  const mean = means[stage] ?? 0;
  if (betterRate <= mean || mean === 0) return 0;
  return 100 * means.reduce((product, one) => product * one, 1) * (betterRate / mean - 1);
}

function lossesPer100(rates: readonly number[]): readonly number[] {
  let left = 100;
  return rates.map((rate) => {
    const lost = left * (1 - rate);
    left -= lost;
    return lost;
  });
}

const largestAt = (losses: readonly number[]): number =>
  losses.reduce((best, loss, stage) => (loss > (losses[best] ?? 0) ? stage : best), 0);
