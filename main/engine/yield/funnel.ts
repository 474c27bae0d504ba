import { betaBinomial } from './beta-binomial.ts';
import { convolve } from './convolve.ts';
import type { RateNode } from './rate-nodes.ts';

/** Row n: probabilities of 0 to n coming out of a stage when n went in. */
export type StageTable = readonly Float64Array[];

/** One stage of the way from larvae given to queens laying. */
export interface FunnelStage {
  readonly table: StageTable;
  /** No more than this many go on (what a builder takes, boxes there are); null = no limit. */
  readonly mostGoOn: number | null;
}

/**
 * A stage's table for up to `most` going in, averaged over all that is not known of its rate. For ONE batch the average
 * is exact; several batches sharing the rate need sharedFunnel.
 */
export function stageTable(nodes: readonly RateNode[], most: number): StageTable {
  const rows = Array.from({ length: most + 1 }, (_, n) => new Float64Array(n + 1));
  for (const { rate, concentration, weight } of nodes)
    for (const row of rows) {
      const chances = betaBinomial(row.length - 1, rate, concentration);
      for (let k = 0; k < row.length; k += 1) row[k] = (row[k] ?? 0) + weight * (chances[k] ?? 0);
    }
  return rows;
}

/** Probabilities of the count that comes out of the last stage when `given` went into the first: an exact chain. */
export function funnel(given: number, stages: readonly FunnelStage[]): Float64Array {
  let chances = certain(given);
  for (const { table, mostGoOn } of stages) chances = cutAt(throughStage(chances, table), mostGoOn);
  return chances;
}

/**
 * Several batches whose rates are known. What goes into shared boxes is added up, cut, and goes on as one lot.
 * @param stagesInBoxes how many of the last stages happen in the boxes: 1 = queens put in, 2 = ripe cells put in.
 */
export function funnelSum(
  given: readonly number[],
  stages: readonly FunnelStage[],
  sharedBoxes: number | null,
  stagesInBoxes = 1,
): Float64Array {
  const parted = sharedBoxes === null ? stages.length : stages.length - stagesInBoxes;
  let total = certain(0);
  for (const n of given) total = convolve(total, funnel(n, stages.slice(0, parted)));
  total = cutAt(total, sharedBoxes);
  for (const { table } of stages.slice(parted)) total = throughStage(total, table);
  return total;
}

/** A stage of which the rate is taken as known. */
export interface FixedStage {
  readonly rate: number;
  readonly concentration: number;
  readonly mostGoOn: number | null;
}

/** The chain without tables, for one set of rates: rows are made as they are needed and never kept. */
export const fixedFunnel = (given: number, stages: readonly FixedStage[]): Float64Array =>
  fixedChain(certain(given), stages);

/** The same when how many went in is itself uncertain. */
export function fixedChain(entered: Float64Array, stages: readonly FixedStage[]): Float64Array {
  let chances = entered;
  for (const { rate, concentration, mostGoOn } of stages) {
    const next = new Float64Array(chances.length);
    for (let n = 0; n < chances.length; n += 1) {
      const weight = chances[n] ?? 0;
      if (weight > 0) addRow(next, n, rate * concentration, concentration, weight);
    }
    chances = cutAt(next, mostGoOn);
  }
  return chances;
}

function addRow(into: Float64Array, n: number, a: number, concentration: number, weight: number): void {
  const b = concentration - a;
  let chance = weight;
  for (let trial = 0; trial < n; trial += 1) chance *= (b + trial) / (concentration + trial);
  if (chance < 1e-250 * weight) {
    const row = betaBinomial(n, a / concentration, concentration);
    for (let k = 0; k <= n; k += 1) into[k] = (into[k] ?? 0) + weight * (row[k] ?? 0);
    return;
  }
  into[0] = (into[0] ?? 0) + chance;
  for (let k = 0; k < n; k += 1) {
    chance *= ((n - k) * (a + k)) / ((k + 1) * (b + n - k - 1));
    into[k + 1] = (into[k + 1] ?? 0) + chance;
  }
}

function throughStage(chances: Float64Array, table: StageTable): Float64Array {
  const next = new Float64Array(chances.length);
  for (let n = 0; n < chances.length; n += 1) {
    const weight = chances[n] ?? 0;
    if (weight === 0) continue;
    const row = table[n];
    if (!row) throw new Error(`the stage's table ends before ${n}`);
    for (let k = 0; k <= n; k += 1) next[k] = (next[k] ?? 0) + weight * (row[k] ?? 0);
  }
  return next;
}

/** All that lies above the limit falls onto it. */
export function cutAt(chances: Float64Array, most: number | null): Float64Array {
  if (most === null || chances.length <= most + 1) return chances;
  const cut = chances.slice(0, most + 1);
  for (let k = most + 1; k < chances.length; k += 1) cut[most] = (cut[most] ?? 0) + (chances[k] ?? 0);
  return cut;
}

export function certain(count: number): Float64Array {
  const chances = new Float64Array(count + 1);
  chances[count] = 1;
  return chances;
}
