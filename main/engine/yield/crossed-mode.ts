import { cholesky, inverse, type Matrix, solve } from './cholesky.ts';

/** Successes of one batch, and to which level of each factor it belongs (numbered from 0). */
export interface CrossedBatch {
  readonly successes: number;
  readonly of: number;
  readonly levels: readonly number[];
  /** What is known of the batch beside its levels, on the logit; 0 when missing. */
  readonly offset?: number;
}

/** Standard deviations on the logit. */
export interface CrossedSpreads {
  readonly intercept: number;
  /** One for each factor. */
  readonly factors: readonly number[];
  /** Of batches that share all levels. */
  readonly batch: number;
}

export interface CrossedMode {
  /** Intercept, then the levels of the first factor, then those of the second, on the logit. */
  readonly effects: Float64Array;
  readonly batchEffects: Float64Array;
  readonly covariance: Matrix;
  readonly logEvidence: number;
}

const SURE_ENOUGH = 1e-10;
const MOST_STEPS = 60;
const SMALLEST_STEP = 1e-6;

/**
 * Most likely effects of a crossed logistic model and their Laplace evidence (Tierney & Kadane 1986, J. Am. Stat.
 * Assoc. 81:82) for given spreads. Batch effects drop out by the Schur complement, so the matrix stays as small as the
 * number of levels. Logit throughout; `start` is a neighbouring answer.
 */
export function crossedMode(
  batches: readonly CrossedBatch[],
  levels: readonly number[],
  spreads: CrossedSpreads,
  start?: Pick<CrossedMode, 'effects' | 'batchEffects'>,
): CrossedMode {
  const places = batches.map((batch) => placesOf(batch, levels));
  const precision = precisionOf(levels, spreads);
  const q = 1 / spreads.batch ** 2;
  let effects = start ? start.effects.slice() : new Float64Array(precision.length);
  let batchEffects = start ? start.batchEffects.slice() : new Float64Array(batches.length);
  let here = logPosterior(batches, places, effects, batchEffects, precision, q);
  let step = newtonStep(batches, places, effects, batchEffects, precision, q);
  for (let count = 0; count < MOST_STEPS && step.size > SURE_ENOUGH; count += 1) {
    let part = 1;
    for (;;) {
      const nextEffects = effects.map((value, at) => value + part * (step.effects[at] ?? 0));
      const nextBatch = batchEffects.map((value, at) => value + part * (step.batchEffects[at] ?? 0));
      const there = logPosterior(batches, places, nextEffects, nextBatch, precision, q);
      if (there >= here - SURE_ENOUGH || part < SMALLEST_STEP) {
        [effects, batchEffects, here] = [nextEffects, nextBatch, there];
        break;
      }
      part /= 2;
    }
    step = newtonStep(batches, places, effects, batchEffects, precision, q);
  }
  const logPrecision = precision.reduce((sum, p) => sum + Math.log(p), 0) + batches.length * Math.log(q);
  const logEvidence = here + 0.5 * logPrecision - step.logRootDeterminant - 0.5 * step.sumLogCurvature;
  return { effects, batchEffects, covariance: inverse(step.root), logEvidence };
}

/** Where the ones of a batch's row of the design stand: the intercept, then its level of each factor. */
function placesOf({ levels: own }: CrossedBatch, levels: readonly number[]): readonly number[] {
  let offset = 1;
  const places = [0];
  levels.forEach((count, factor) => {
    places.push(offset + (own[factor] ?? 0));
    offset += count;
  });
  return places;
}

const precisionOf = (levels: readonly number[], { intercept, factors }: CrossedSpreads): Float64Array =>
  Float64Array.from([
    1 / intercept ** 2,
    ...levels.flatMap((count, factor) => Array.from({ length: count }, () => 1 / (factors[factor] ?? 1) ** 2)),
  ]);

const sumAt = (effects: Float64Array, places: readonly number[]): number =>
  places.reduce((sum, place) => sum + (effects[place] ?? 0), 0);

function logPosterior(
  batches: readonly CrossedBatch[],
  places: readonly (readonly number[])[],
  effects: Float64Array,
  batchEffects: Float64Array,
  precision: Float64Array,
  q: number,
): number {
  let sum = 0;
  batches.forEach(({ successes, of, offset = 0 }, at) => {
    const own = batchEffects[at] ?? 0;
    const eta = sumAt(effects, places[at] ?? []) + own + offset;
    sum += successes * eta - of * softPlus(eta) + logChoose(of, successes) - 0.5 * q * own * own;
  });
  effects.forEach((effect, at) => {
    sum -= 0.5 * (precision[at] ?? 0) * effect * effect;
  });
  return sum;
}

const softPlus = (eta: number): number => (eta > 0 ? eta + Math.log1p(Math.exp(-eta)) : Math.log1p(Math.exp(eta)));

function logChoose(n: number, k: number): number {
  let sum = 0;
  for (let taken = 1; taken <= Math.min(k, n - k); taken += 1) sum += Math.log((n - taken + 1) / taken);
  return sum;
}

interface NewtonStep {
  readonly effects: Float64Array;
  readonly batchEffects: Float64Array;
  readonly size: number;
  readonly root: Matrix;
  readonly logRootDeterminant: number;
  readonly sumLogCurvature: number;
}

function newtonStep(
  batches: readonly CrossedBatch[],
  places: readonly (readonly number[])[],
  effects: Float64Array,
  batchEffects: Float64Array,
  precision: Float64Array,
  q: number,
): NewtonStep {
  const matrix: Matrix = [...precision].map((p, at) => {
    const row = new Float64Array(precision.length);
    row[at] = p;
    return row;
  });
  const gradient = effects.map((effect, at) => -(precision[at] ?? 0) * effect);
  const pulls = batches.map(({ successes, of, offset = 0 }, at) => {
    const own = batchEffects[at] ?? 0;
    const rate = 1 / (1 + Math.exp(-sumAt(effects, places[at] ?? []) - own - offset));
    const [curve, rest] = [of * rate * (1 - rate), successes - of * rate];
    for (const row of places[at] ?? []) {
      gradient[row] = (gradient[row] ?? 0) + rest - (curve * (rest - q * own)) / (curve + q);
      for (const column of places[at] ?? [])
        (matrix[row] as Float64Array)[column] = (matrix[row]?.[column] ?? 0) + (curve * q) / (curve + q);
    }
    return { curve, pull: rest - q * own };
  });
  const root = cholesky(matrix);
  const change = solve(root, gradient);
  const batchChange = Float64Array.from(
    pulls.map(({ curve, pull }, at) => (pull - curve * sumAt(change, places[at] ?? [])) / (curve + q)),
  );
  return {
    effects: change,
    batchEffects: batchChange,
    size: Math.max(...change.map(Math.abs), ...batchChange.map(Math.abs)),
    root,
    logRootDeterminant: root.reduce((sum, row, at) => sum + Math.log(row[at] ?? 1), 0),
    sumLogCurvature: pulls.reduce((sum, { curve }) => sum + Math.log(curve + q), 0),
  };
}
