import betaCdf from '@stdlib/stats-base-dists-beta-cdf';
import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { clopperPearsonInterval, jeffreysInterval } from '../../main/engine/yield/beta-intervals.ts';
import { wilsonInterval } from '../../main/engine/yield/wilson-interval.ts';
import type { Failure, KindTable, Vector } from './vector.ts';

const INTERVALS = {
  wilson: wilsonInterval,
  jeffreys: jeffreysInterval,
  clopper_pearson: clopperPearsonInterval,
} as const;

interface IntervalInput {
  readonly method: keyof typeof INTERVALS;
  readonly x: number;
  readonly n: number;
  readonly level: number;
}

/** Compares two numbers by the vector's absolute tolerance. */
export function compareNumber(
  what: string,
  got: number | undefined,
  expected: number,
  tolerance: number,
): readonly Failure[] {
  if (got !== undefined && Math.abs(got - expected) <= tolerance) return [];
  return [`${what} is ${got}, expected ${expected} within ${tolerance}`];
}

function checkInterval({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { method, x, n, level } = input as IntervalInput;
  const { lower, upper } = expected as { readonly lower: number; readonly upper: number };
  const interval = INTERVALS[method](x, n, level);
  return [
    ...compareNumber('lower', interval?.lower, lower, tolerance),
    ...compareNumber('upper', interval?.upper, upper, tolerance),
  ];
}

function checkBetaQuantile({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { p, a, b } = input as { readonly p: number; readonly a: number; readonly b: number };
  return compareNumber('quantile', betaQuantile(p, a, b), (expected as { readonly value: number }).value, tolerance);
}

function checkBetaCdf({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { x, a, b } = input as { readonly x: number; readonly a: number; readonly b: number };
  return compareNumber('probability', betaCdf(x, a, b), (expected as { readonly value: number }).value, tolerance);
}

export const statisticsKinds: KindTable = {
  interval: checkInterval,
  beta_quantile: checkBetaQuantile,
  beta_cdf: checkBetaCdf,
};
