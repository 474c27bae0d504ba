import betaCdf from '@stdlib/stats-base-dists-beta-cdf';
import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { betaBinomial } from '../../main/engine/yield/beta-binomial.ts';
import { clopperPearsonInterval, jeffreysInterval } from '../../main/engine/yield/beta-intervals.ts';
import { countQuantile } from '../../main/engine/yield/count-summary.ts';
import { type BatchCount, groupRates } from '../../main/engine/yield/group-rates.ts';
import { nextBatches } from '../../main/engine/yield/next-batch.ts';
import { nodesOfJoint } from '../../main/engine/yield/rate-nodes.ts';
import type { RateSummary } from '../../main/engine/yield/rate-summary.ts';
import { wilsonInterval } from '../../main/engine/yield/wilson-interval.ts';
import { compareNumber } from './compare-number.ts';
import { crossedKinds } from './crossed-kinds.ts';
import { forecastKinds } from './forecast-kinds.ts';
import { laplaceKinds } from './laplace-kinds.ts';
import { singleKinds } from './single-kinds.ts';
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

interface ExpectedRate {
  readonly mean: number;
  readonly sd: number;
  readonly q05: number;
  readonly q50: number;
  readonly q95: number;
}

interface ExpectedCount {
  readonly mean: number;
  readonly q05: number;
  readonly q50: number;
  readonly q95: number;
  readonly prob_at_least_k: number;
}

interface Hier3Expected {
  readonly groups: readonly ExpectedRate[];
  readonly prob_best: readonly number[];
  readonly prob_pair: readonly (readonly number[])[];
  readonly new_group: ExpectedRate;
  readonly next_batch: readonly ExpectedCount[];
  readonly next_batch_new_group: ExpectedCount;
  readonly hyper: { readonly E_mu: number; readonly E_s_between: number; readonly E_s_within: number };
}

interface Hier3Tolerance {
  readonly rates: number;
  readonly probabilities: number;
  readonly predictive_mean: number;
  readonly predictive_quantiles: number;
  readonly hyper: number;
}

/** Groups with partial pooling, on the same grid as the window. */
function checkHier3(vector: Vector): readonly Failure[] {
  const input = vector.input as {
    groups: Record<string, { n: number[]; x: number[] }>;
    predict_n: number;
    predict_k: number;
  };
  const expected = vector.expected as Hier3Expected;
  const tolerance = vector.tolerance as unknown as Hier3Tolerance;
  const groups = Object.values(input.groups).map(({ n, x }) =>
    n.map((of, index): BatchCount => ({ of, successes: x[index] ?? 0 })),
  );
  const rates = groupRates(groups);
  const rate = (what: string, got: RateSummary | undefined, want: ExpectedRate) => [
    ...compareNumber(`${what} mean`, got?.mean, want.mean, tolerance.rates),
    ...compareNumber(`${what} sd`, got?.deviation, want.sd, tolerance.rates),
    ...compareNumber(`${what} q05`, got?.lower, want.q05, tolerance.rates),
    ...compareNumber(`${what} q50`, got?.median, want.q50, tolerance.rates),
    ...compareNumber(`${what} q95`, got?.upper, want.q95, tolerance.rates),
  ];
  const count = (what: string, joint: readonly Float64Array[], want: ExpectedCount) => {
    const chances = nextBatches(nodesOfJoint(joint), input.predict_n, 1);
    const total = chances.reduce((sum, chance) => sum + chance, 0);
    const mean = chances.reduce((sum, chance, k) => sum + k * chance, 0) / total;
    const atLeast = chances.slice(input.predict_k).reduce((sum, chance) => sum + chance, 0) / total;
    return [
      ...compareNumber(`${what} mean`, mean, want.mean, tolerance.predictive_mean),
      ...compareNumber(`${what} at least`, atLeast, want.prob_at_least_k, tolerance.probabilities),
      ...([0.05, 0.5, 0.95] as const).flatMap((p, index) =>
        compareNumber(
          `${what} q${p}`,
          countQuantile(chances, p),
          [want.q05, want.q50, want.q95][index] ?? 0,
          tolerance.predictive_quantiles,
        ),
      ),
    ];
  };
  return [
    ...expected.groups.flatMap((want, group) => rate(`group ${group}`, rates.groups[group], want)),
    ...expected.prob_best.flatMap((want, group) =>
      compareNumber(`best ${group}`, rates.groups[group]?.probabilityBest, want, tolerance.probabilities),
    ),
    ...expected.prob_pair.flatMap((row, a) =>
      row.flatMap((want, b) =>
        compareNumber(`pair ${a} ${b}`, rates.probabilityBetter[a]?.[b], want, tolerance.probabilities),
      ),
    ),
    ...rate('new group', rates.newGroup, expected.new_group),
    ...expected.next_batch.flatMap((want, group) =>
      count(`next batch ${group}`, rates.jointByGroup[group] ?? [], want),
    ),
    ...count('next batch of a new group', rates.jointOfNewGroup, expected.next_batch_new_group),
    ...compareNumber('mean of groups', rates.hyper.mean, expected.hyper.E_mu, tolerance.hyper),
    ...compareNumber('spread between', rates.hyper.spreadBetween, expected.hyper.E_s_between, tolerance.hyper),
    ...compareNumber('spread within', rates.hyper.spreadWithin, expected.hyper.E_s_within, tolerance.hyper),
  ];
}

interface BetaBinomialExpected {
  readonly mean: number;
  readonly variance: number;
  readonly pmf: readonly number[];
  readonly pmf_at: readonly number[];
  readonly cdf_mid: number;
  readonly q05: number;
  readonly q50: number;
  readonly q95: number;
}

function checkBetaBinomial({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { n, a, b } = input as { readonly n: number; readonly a: number; readonly b: number };
  const want = expected as BetaBinomialExpected;
  const chances = betaBinomial(n, a / (a + b), a + b);
  const mean = chances.reduce((sum, chance, k) => sum + k * chance, 0);
  const variance = chances.reduce((sum, chance, k) => sum + (k - mean) ** 2 * chance, 0);
  const middle = chances.slice(0, Math.floor(n / 2) + 1).reduce((sum, chance) => sum + chance, 0);
  return [
    ...compareNumber('mean', mean, want.mean, tolerance),
    ...compareNumber('variance', variance, want.variance, Math.max(tolerance, 1e-9 * want.variance)),
    ...want.pmf_at.flatMap((k, index) =>
      compareNumber(`probability of ${k}`, chances[k], want.pmf[index] ?? 0, tolerance),
    ),
    ...compareNumber('at most half', middle, want.cdf_mid, tolerance),
    ...([0.05, 0.5, 0.95] as const).flatMap((p, index) =>
      compareNumber(`quantile ${p}`, countQuantile(chances, p), [want.q05, want.q50, want.q95][index] ?? 0, 0),
    ),
  ];
}

export const statisticsKinds: KindTable = {
  interval: checkInterval,
  beta_quantile: checkBetaQuantile,
  beta_cdf: checkBetaCdf,
  betabinomial: checkBetaBinomial,
  hier3: checkHier3,
  ...forecastKinds,
  ...crossedKinds,
  ...singleKinds,
  ...laplaceKinds,
};
