import betaln from '@stdlib/math-base-special-betaln';
import { afterCount, type BetaBelief, deviationOf, meanOf } from './beta-belief.ts';
import type { BatchCount } from './group-rates.ts';
import { normalised, type RateGrid, rateGrid } from './rate-grid.ts';
import { densityQuantile } from './rate-summary.ts';

/** The box of the grid: x = log(a / b), z = log(a + b), a and b being the beta the batches' rates come from. */
export interface TwoLevelGrid {
  readonly x: readonly [number, number];
  readonly z: readonly [number, number];
  readonly steps: number;
}

export interface TwoLevelRates {
  readonly alpha: number;
  readonly beta: number;
  /** The most likely x and z in the coordinates of the grid. */
  readonly mode: { readonly x: number; readonly z: number };
  /** Each batch's own rate, drawn towards the others. */
  readonly batches: readonly BatchRate[];
}

export interface BatchRate {
  readonly mean: number;
  readonly deviation: number;
  readonly quantile: (probability: number) => number;
}

const USUAL: TwoLevelGrid = { x: [-5, 5], z: [0, 7], steps: 60 };
const NEGLIGIBLE = 1e-8;

/**
 * The rates of single batches of one kind, each drawn towards the others: binomial counts, rates from one beta whose
 * parameters have the prior (a + b)^(-5/2), reckoned on a grid (Gelman et al. 2013, Bayesian Data Analysis 3, 5.3).
 * Answers how good one batch truly was, where groupRates answers how good its group is.
 */
export function twoLevelRates(counts: readonly BatchCount[], grid: TwoLevelGrid = USUAL): TwoLevelRates {
  const cells = weighedCells(counts, grid);
  const best = cells.reduce((most, cell) => (cell.weight > most.weight ? cell : most), cells[0] ?? NOTHING);
  const kept = cells.filter(({ weight }) => weight > NEGLIGIBLE);
  const mean = (value: (belief: BetaBelief) => number) =>
    kept.reduce((sum, { belief, weight }) => sum + weight * value(belief), 0);
  return {
    alpha: mean(({ a }) => a),
    beta: mean(({ b }) => b),
    mode: { x: best.x, z: best.z },
    batches: counts.map((count) => batchRate(kept, count)),
  };
}

interface Cell {
  readonly x: number;
  readonly z: number;
  readonly belief: BetaBelief;
  readonly weight: number;
}

const NOTHING: Cell = { x: 0, z: 0, belief: { a: 1, b: 1 }, weight: 0 };

function weighedCells(counts: readonly BatchCount[], { x, z, steps }: TwoLevelGrid): readonly Cell[] {
  const along = ([from, to]: readonly [number, number]) =>
    Array.from({ length: steps }, (_, index) => from + ((to - from) * index) / (steps - 1));
  const places = along(x).flatMap((atX) => along(z).map((atZ) => ({ x: atX, z: atZ, belief: beliefAt(atX, atZ) })));
  // The logs of a and b are the coordinates, so the Jacobian a b joins the prior.
  const logs = places.map(
    ({ belief: { a, b } }) => -2.5 * Math.log(a + b) + Math.log(a * b) + logLikelihood(counts, a, b),
  );
  const weights = normalised(Float64Array.from(logs));
  return places.map((place, at) => ({ ...place, weight: weights[at] ?? 0 }));
}

function beliefAt(x: number, z: number): BetaBelief {
  const share = 1 / (1 + Math.exp(-x));
  return { a: share * Math.exp(z), b: (1 - share) * Math.exp(z) };
}

const logLikelihood = (counts: readonly BatchCount[], a: number, b: number): number =>
  counts.reduce((sum, { successes, of }) => sum + betaln(a + successes, b + of - successes), 0) -
  counts.length * betaln(a, b);

function batchRate(cells: readonly Cell[], count: BatchCount): BatchRate {
  const beliefs = cells.map(({ belief, weight }) => ({ belief: afterCount(belief, count), weight }));
  const total = beliefs.reduce((sum, { weight }) => sum + weight, 0);
  const average = (value: (belief: BetaBelief) => number) =>
    beliefs.reduce((sum, { belief, weight }) => sum + weight * value(belief), 0) / total;
  const mean = average(meanOf);
  const square = average((belief) => deviationOf(belief) ** 2 + meanOf(belief) ** 2);
  let density: Float64Array | null = null;
  const grid = rateGrid(0.05);
  return {
    mean,
    deviation: Math.sqrt(Math.max(0, square - mean * mean)),
    quantile: (probability) => {
      density ??= mixtureOn(grid, beliefs);
      return densityQuantile(grid, density, probability);
    },
  };
}

/** The mixture's density in the logit, which is where the grid's nodes lie evenly. */
function mixtureOn(grid: RateGrid, beliefs: readonly { readonly belief: BetaBelief; readonly weight: number }[]) {
  const density = new Float64Array(grid.rates.length);
  for (const { belief, weight } of beliefs) {
    const scale = Math.log(weight) - betaln(belief.a, belief.b);
    grid.logits.forEach((logit, node) => {
      const log = -belief.a * Math.log1p(Math.exp(-logit)) - belief.b * Math.log1p(Math.exp(logit)) + scale;
      density[node] = (density[node] ?? 0) + Math.exp(log);
    });
  }
  return density;
}
