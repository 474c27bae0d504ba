import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import { type CrossedBatch, type CrossedMode, crossedMode } from './crossed-mode.ts';
import { logHalfNormal, normalised } from './rate-grid.ts';

export interface CrossedRates {
  /** [a][b]: probability that level a of the first factor does better than b, at the same level of the other factor. */
  readonly probabilityBetter: readonly (readonly number[])[];
  /** Expected difference of two levels on the logit, and its standard deviation. */
  readonly difference: (a: number, b: number) => { readonly mean: number; readonly deviation: number };
  /** Expected rate of each level of the first factor where the other factor is average. */
  readonly rates: readonly number[];
  /** Expected spreads on the logit: one for each factor, then of batches alike in all. */
  readonly spreads: readonly number[];
}

const NODES = 8;
const WIDEST = 1.5;
const INTERCEPT = 2;
/** Scales of the half-normal priors, on the logit: a judgement of this house. */
const FACTOR_SCALE = 0.5;
const BATCH_SCALE = 0.7;
const NEGLIGIBLE = 1e-9;

const nodes = Array.from({ length: NODES }, (_, index) => ((index + 0.5) * WIDEST) / NODES);

interface Weighed {
  readonly mode: CrossedMode;
  readonly spreads: readonly number[];
  readonly weight: number;
}

/**
 * Rates of the levels of one factor (methods) allowing for another (builder colonies): a crossed logistic model with an
 * effect for each level and each batch, averaged over a fixed grid of spreads by nested Laplace approximation (Rue,
 * Martino & Chopin 2009, J. R. Stat. Soc. B 71:319). Answers whether a method is better, or was only tried on better
 * builders. Not where methods and builders fall into unconnected parts: ask `connected` first. Show it beside the plain
 * comparison, never instead.
 * @param levels number of levels of each factor.
 */
export function crossedRates(batches: readonly CrossedBatch[], levels: readonly [number, number]): CrossedRates {
  const used = batches.filter(({ of }) => of > 0);
  const kept = weigh(used, levels);
  const difference = (a: number, b: number) => {
    const parts = kept.map(({ mode, weight }) => ({ weight, ...gap(mode, a, b) }));
    const mean = parts.reduce((sum, part) => sum + part.weight * part.mean, 0);
    const square = parts.reduce((sum, part) => sum + part.weight * (part.deviation ** 2 + part.mean ** 2), 0);
    return { mean, deviation: Math.sqrt(Math.max(0, square - mean * mean)) };
  };
  const each = Array.from({ length: levels[0] }, (_, level) => level);
  return {
    probabilityBetter: each.map((a) => each.map((b) => (a === b ? 0 : chanceBetter(kept, a, b)))),
    difference,
    rates: each.map((level) => kept.reduce((sum, { mode, weight }) => sum + weight * averageRate(mode, level), 0)),
    spreads: [0, 1, 2].map((at) => kept.reduce((sum, { spreads, weight }) => sum + weight * (spreads[at] ?? 0), 0)),
  };
}

function weigh(batches: readonly CrossedBatch[], levels: readonly number[]): readonly Weighed[] {
  const all: (Omit<Weighed, 'weight'> & { readonly log: number })[] = [];
  let start: CrossedMode | undefined;
  for (const first of nodes)
    for (const second of nodes)
      for (const batch of nodes) {
        start = crossedMode(batches, levels, { intercept: INTERCEPT, factors: [first, second], batch }, start);
        const prior =
          logHalfNormal(first, FACTOR_SCALE) + logHalfNormal(second, FACTOR_SCALE) + logHalfNormal(batch, BATCH_SCALE);
        all.push({ mode: start, spreads: [first, second, batch], log: start.logEvidence + prior });
      }
  const weights = normalised(Float64Array.from(all, ({ log }) => log));
  const kept = all.flatMap(({ mode, spreads }, at) => {
    const weight = weights[at] ?? 0;
    return weight < NEGLIGIBLE ? [] : [{ mode, spreads, weight }];
  });
  const total = kept.reduce((sum, { weight }) => sum + weight, 0);
  return kept.map((one) => ({ ...one, weight: one.weight / total }));
}

/** Difference of two levels of the first factor: they stand right after the intercept. */
function gap({ effects, covariance }: CrossedMode, a: number, b: number): { mean: number; deviation: number } {
  const at = (row: number, column: number) => covariance[row + 1]?.[column + 1] ?? 0;
  return {
    mean: (effects[a + 1] ?? 0) - (effects[b + 1] ?? 0),
    deviation: Math.sqrt(Math.max(0, at(a, a) + at(b, b) - 2 * at(a, b))),
  };
}

function chanceBetter(kept: readonly Weighed[], a: number, b: number): number {
  return kept.reduce((sum, { mode, weight }) => {
    const { mean, deviation } = gap(mode, a, b);
    return sum + weight * normalCdf(mean, 0, deviation);
  }, 0);
}

/** Mean of the rate when its logit is normal, by the trapezoid rule over five deviations either way. */
function averageRate({ effects, covariance }: CrossedMode, level: number): number {
  const at = level + 1;
  const mean = (effects[0] ?? 0) + (effects[at] ?? 0);
  const variance = (covariance[0]?.[0] ?? 0) + (covariance[at]?.[at] ?? 0) + 2 * (covariance[0]?.[at] ?? 0);
  let [sum, total] = [0, 0];
  for (let z = -5; z <= 5; z += 0.25) {
    const density = Math.exp(-0.5 * z * z);
    sum += density / (1 + Math.exp(-mean - z * Math.sqrt(variance)));
    total += density;
  }
  return sum / total;
}

/**
 * Which levels of the first factor can be compared at all: levels share a number when they were tried, directly or by
 * way of others, on the same levels of the second factor.
 */
export function connected(batches: readonly CrossedBatch[], levels: readonly [number, number]): readonly number[] {
  const parent = Array.from({ length: levels[0] + levels[1] }, (_, at) => at);
  const rootOf = (at: number): number => {
    const above = parent[at] ?? at;
    return above === at ? at : rootOf(above);
  };
  for (const { of, levels: own } of batches) {
    if (of === 0) continue;
    const [a, b] = [rootOf(own[0] ?? 0), rootOf(levels[0] + (own[1] ?? 0))];
    parent[Math.max(a, b)] = Math.min(a, b);
  }
  return Array.from({ length: levels[0] }, (_, level) => rootOf(level));
}
