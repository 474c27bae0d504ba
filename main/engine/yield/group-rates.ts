import { batchLikelihoods, type GroupLikelihood } from './batch-likelihood.ts';
import { type GroupPrior, logHalfNormal, type RateGrid, rateGrid, WITHIN_SCALE } from './rate-grid.ts';
import { type RateSummary, summarise } from './rate-summary.ts';

export interface BatchCount {
  readonly successes: number;
  readonly of: number;
}

export interface GroupRates {
  /** One for each group, in the order given. */
  readonly groups: readonly (RateSummary & { readonly probabilityBest: number })[];
  /** [a][b]: probability that group a's rate is the higher one. */
  readonly probabilityBetter: readonly (readonly number[])[];
  /** A group never tried. */
  readonly newGroup: RateSummary;
  readonly hyper: { readonly mean: number; readonly spreadBetween: number; readonly spreadWithin: number };
  /** For forecasts: weight of each rate (row by spread within) for each group, and for a group never tried. */
  readonly jointByGroup: readonly (readonly Float64Array[])[];
  readonly jointOfNewGroup: readonly Float64Array[];
}

const USUAL_STEP = 0.05;
/** Above this many in one group's denominators the posterior is so narrow that the grid must be finer. */
const FINE_ABOVE = 1_000;
const NEGLIGIBLE = 1e-7;
const LEAST_INTEGRAL = 1e-300;

/**
 * Rates of groups that borrow strength from each other: a three-level model in which batches of a group differ
 * (beta-binomial) and groups differ (beta), reckoned in full on a fixed grid instead of sampled (Gelman et al. 2013,
 * Bayesian Data Analysis 3, ch. 5; partial pooling after Gelman, Hill & Yajima 2012, J. Res. Educ. Effectiveness 5:189).
 * Answers what a group's rate is, and which is better, with honest doubt at small counts. Batches with `of` 0 say
 * nothing. Not for groups that were only tried together with something else; see the connection test.
 */
export function groupRates(groups: readonly (readonly BatchCount[])[]): GroupRates {
  return ratesOf(solveGroups(groups));
}

/** The same from a model that was weighed already. */
export const ratesOf = ({ grid, likelihoods, cells, groups }: SolvedGroups): GroupRates =>
  collect(grid, likelihoods, cells, groups);

/** The model weighed on its grid: what every answer about the groups is summed up from. */
export interface SolvedGroups {
  readonly grid: RateGrid;
  readonly likelihoods: readonly GroupLikelihood[];
  readonly cells: readonly Cell[];
  /** How many groups there are. */
  readonly groups: number;
}

export function solveGroups(groups: readonly (readonly BatchCount[])[]): SolvedGroups {
  const largest = Math.max(0, ...groups.map((batches) => batches.reduce((sum, batch) => sum + batch.of, 0)));
  const grid = rateGrid(largest > FINE_ABOVE ? USUAL_STEP / 2 : USUAL_STEP);
  const likelihoods = batchLikelihoods(grid, groups);
  return { grid, likelihoods, cells: weighCells(grid, likelihoods, groups.length), groups: groups.length };
}

/** One point of the grid of mean, spread between and spread within, with its weight and each group's integral. */
export interface Cell {
  readonly prior: GroupPrior;
  readonly within: number;
  readonly weight: number;
  readonly integrals: readonly number[];
}

function weighCells(grid: RateGrid, likelihoods: readonly GroupLikelihood[], groups: number): readonly Cell[] {
  const windows = likelihoods.map(({ byGroup }) => byGroup.map(windowOf));
  const logs: number[] = [];
  const integralsOf: (readonly number[])[] = [];
  likelihoods.forEach(({ spread, byGroup }, within) => {
    for (const prior of grid.priors) {
      const integrals = byGroup.map((likelihood, group) =>
        Math.max(LEAST_INTEGRAL, dotWithin(prior.density, likelihood, windows[within]?.[group])),
      );
      integralsOf.push(integrals);
      const evidence = integrals.reduce((sum, integral) => sum + Math.log(integral), 0);
      logs.push(evidence + prior.logWeight + logHalfNormal(spread, WITHIN_SCALE));
    }
  });
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.flatMap((weight, index): readonly Cell[] => {
    const share = weight / sum;
    const prior = grid.priors[index % grid.priors.length];
    if (share < NEGLIGIBLE || !prior) return [];
    const integrals = integralsOf[index] ?? new Array<number>(groups).fill(1);
    return [{ prior, within: Math.floor(index / grid.priors.length), weight: share, integrals }];
  });
}

function collect(
  grid: RateGrid,
  likelihoods: readonly GroupLikelihood[],
  cells: readonly Cell[],
  groups: number,
): GroupRates {
  const nodes = grid.rates.length;
  const rows = () => likelihoods.map(() => new Float64Array(nodes));
  const joint = Array.from({ length: groups }, rows);
  const jointOfNew = rows();
  const better = Array.from({ length: groups }, () => new Float64Array(groups));
  const best = new Float64Array(groups);
  const windows = likelihoods.map(({ byGroup }) => byGroup.map(windowOf));
  const densities = Array.from({ length: groups }, () => new Float64Array(nodes));
  const below = Array.from({ length: groups }, () => new Float64Array(nodes));
  const hyper = { mean: 0, spreadBetween: 0, spreadWithin: 0 };
  for (const cell of cells) {
    const { prior, weight, within } = cell;
    const likelihood = likelihoods[within];
    if (!likelihood) continue;
    likelihood.byGroup.forEach((one, group) => {
      const density = densities[group];
      const window = windows[within]?.[group];
      if (!density || !window) return;
      fillDensity(density, prior.density, one, cell.integrals[group] ?? 1, window);
      addScaled(joint[group]?.[within], density, weight);
      fillCumulative(below[group], density);
    });
    addScaled(jointOfNew[within], prior.density, weight);
    addComparisons(densities, below, windows[within] ?? [], { weight, better, best });
    hyper.mean += weight * prior.mean;
    hyper.spreadBetween += weight * prior.spread;
    hyper.spreadWithin += weight * likelihood.spread;
  }
  const ties = best.reduce((sum, share) => sum + share, 0) || 1;
  return {
    groups: joint.map((byWithin, group) => ({
      ...summarise(grid, sumRows(byWithin, nodes)),
      probabilityBest: (best[group] ?? 0) / ties,
    })),
    probabilityBetter: better.map((row) => [...row]),
    newGroup: summarise(grid, sumRows(jointOfNew, nodes)),
    hyper,
    jointByGroup: joint,
    jointOfNewGroup: jointOfNew,
  };
}

/** Nodes, from (included) to (excluded), at which a likelihood is not negligible. */
interface Window {
  readonly from: number;
  readonly to: number;
}

const NEGLIGIBLE_LIKELIHOOD = 1e-14;

function windowOf(likelihood: Float64Array): Window {
  let most = 0;
  for (const value of likelihood) if (value > most) most = value;
  const least = most * NEGLIGIBLE_LIKELIHOOD;
  let from = 0;
  let to = likelihood.length;
  while (from < to && (likelihood[from] ?? 0) < least) from += 1;
  while (to > from && (likelihood[to - 1] ?? 0) < least) to -= 1;
  return { from, to };
}

/** Two sums side by side: an adder need not wait for the one before it. */
function dotWithin(a: Float64Array, b: Float64Array, window: Window | undefined): number {
  const { from, to } = window ?? { from: 0, to: a.length };
  let even = 0;
  let odd = 0;
  for (let node = from + 1; node < to; node += 2) {
    even += (a[node - 1] ?? 0) * (b[node - 1] ?? 0);
    odd += (a[node] ?? 0) * (b[node] ?? 0);
  }
  if ((to - from) % 2 === 1) even += (a[to - 1] ?? 0) * (b[to - 1] ?? 0);
  return even + odd;
}

function fillDensity(
  density: Float64Array,
  prior: Float64Array,
  likelihood: Float64Array,
  integral: number,
  { from, to }: Window,
): void {
  density.fill(0);
  for (let node = from; node < to; node += 1) density[node] = ((prior[node] ?? 0) * (likelihood[node] ?? 0)) / integral;
}

function fillCumulative(below: Float64Array | undefined, density: Float64Array): void {
  if (!below) return;
  let sum = 0;
  for (let node = 0; node < density.length; node += 1) {
    const share = density[node] ?? 0;
    sum += share;
    below[node] = sum - share / 2;
  }
}

interface Comparisons {
  readonly weight: number;
  readonly better: readonly Float64Array[];
  readonly best: Float64Array;
}

/** Adds one cell's part to P(a > b) and P(best); ties on a node are shared. */
function addComparisons(
  densities: readonly Float64Array[],
  below: readonly Float64Array[],
  windows: readonly Window[],
  { weight, better, best }: Comparisons,
): void {
  densities.forEach((density, a) => {
    const row = better[a];
    const window = windows[a];
    if (!row || !window) return;
    below.forEach((cumulative, b) => {
      if (a !== b) row[b] = (row[b] ?? 0) + weight * dotWithin(density, cumulative, window);
    });
    let share = 0;
    for (let node = window.from; node < window.to; node += 1) {
      let above = density[node] ?? 0;
      for (let b = 0; b < below.length && above > 0; b += 1) if (b !== a) above *= below[b]?.[node] ?? 1;
      share += above;
    }
    best[a] = (best[a] ?? 0) + weight * share;
  });
}

/** Probability of lying below each node, half of the node's own counted in. */
export function cumulativeAtMiddle(density: Float64Array): Float64Array {
  let sum = 0;
  return density.map((share) => {
    sum += share;
    return sum - share / 2;
  });
}

export const posterior = (prior: Float64Array, likelihood: Float64Array, integral: number): Float64Array =>
  prior.map((share, node) => (share * (likelihood[node] ?? 0)) / integral);

function addScaled(into: Float64Array | undefined, values: Float64Array, factor: number): void {
  if (!into) return;
  for (let node = 0; node < values.length; node += 1) into[node] = (into[node] ?? 0) + factor * (values[node] ?? 0);
}

function sumRows(rows: readonly Float64Array[], nodes: number): Float64Array {
  const sum = new Float64Array(nodes);
  for (const row of rows) addScaled(sum, row, 1);
  return sum;
}
