/**
 * The fixed grid on which rates of groups are reckoned: the logit of a rate from -8 to 8, the mean of all groups, and two
 * spreads. Nothing is drawn at random, so the same counts give the same answer on every machine.
 */
export interface RateGrid {
  /** Logit of the rate at each node. */
  readonly logits: Float64Array;
  readonly rates: Float64Array;
  /** One row for each pair of mean and spread between groups: how likely each rate is before any count, summing to 1. */
  readonly priors: readonly GroupPrior[];
}

export interface GroupPrior {
  readonly mean: number;
  /** (kappa + 1)^(-1/2): 0 = all groups alike, near 1 = groups have nothing to do with each other. */
  readonly spread: number;
  readonly logWeight: number;
  readonly density: Float64Array;
}

const EDGE = 8;
const MEANS = 50;
const SPREADS = 20;
const WIDEST_SPREAD = 0.8;
/** Scales of the half-normal priors of the two spreads: about 11 points between groups, 15 between batches (a judgement). */
export const BETWEEN_SCALE = 0.25;
export const WITHIN_SCALE = 0.35;

/** Midpoints of the spreads, the same for groups and for batches within a group. */
export const spreadNodes = (): readonly number[] =>
  Array.from({ length: SPREADS }, (_, index) => ((index + 0.5) * WIDEST_SPREAD) / SPREADS);

/** Concentration that belongs to a spread. */
export const concentrationOf = (spread: number): number => 1 / (spread * spread) - 1;

/** Log density of a half-normal, up to a constant. */
export const logHalfNormal = (value: number, scale: number): number => -(value * value) / (2 * scale * scale);

const grids = new Map<number, RateGrid>();

/** The grid for a step of the logit; kept, since every comparison uses it. */
export function rateGrid(step: number): RateGrid {
  const known = grids.get(step);
  if (known) return known;
  const nodes = Math.round((2 * EDGE) / step) + 1;
  const logits = Float64Array.from({ length: nodes }, (_, index) => -EDGE + index * step);
  const grid: RateGrid = { logits, rates: logits.map((logit) => 1 / (1 + Math.exp(-logit))), priors: priorsOn(logits) };
  grids.set(step, grid);
  return grid;
}

function priorsOn(logits: Float64Array): readonly GroupPrior[] {
  const logRate = logits.map((logit) => -Math.log1p(Math.exp(-logit)));
  const logRest = logits.map((logit) => -Math.log1p(Math.exp(logit)));
  return Array.from({ length: MEANS }, (_, index) => (index + 0.5) / MEANS).flatMap((mean) =>
    spreadNodes().map((spread) => {
      const kappa = concentrationOf(spread);
      // The Jacobian of the logit is inside: m^(mu kappa) (1-m)^((1-mu) kappa) in place of the beta's exponents less 1.
      const logs = logits.map(
        (_logit, node) => mean * kappa * (logRate[node] ?? 0) + (1 - mean) * kappa * (logRest[node] ?? 0),
      );
      return { mean, spread, logWeight: logHalfNormal(spread, BETWEEN_SCALE), density: normalised(logs) };
    }),
  );
}

/** Exponentiates logs without overflow and makes them sum to 1. */
export function normalised(logs: Float64Array): Float64Array {
  const most = logs.reduce((largest, value) => Math.max(largest, value), Number.NEGATIVE_INFINITY);
  const weights = logs.map((value) => Math.exp(value - most));
  const sum = weights.reduce((total, value) => total + value, 0);
  return weights.map((value) => value / sum);
}
