import type { FunnelStage, StageTable } from './funnel.ts';

/** Enough larvae, or the reason why no number of them is. */
export type LarvaeAnswer =
  | { readonly kind: 'enough'; readonly larvae: number; readonly chance: number; readonly chanceOfOneFewer: number }
  | {
      readonly kind: 'notReachable';
      /** The best chance there is within the most larvae asked about. */
      readonly chance: number;
      /** Stages whose limit, lifted alone, would make it reachable. */
      readonly heldBackBy: readonly number[];
    };

/** The most larvae ever proposed. */
export const MOST_LARVAE = 400;

const NOISE = 1e-12;

/**
 * Chance of at least `wanted` coming out, for every number going in from 0 to what the tables hold. Reckoned backwards,
 * from the last stage to the first, so that one pass answers for all numbers of larvae.
 */
export function chancesByGiven(wanted: number, stages: readonly FunnelStage[]): Float64Array {
  const size = Math.min(...stages.map(({ table }) => table.length));
  let reach = Float64Array.from({ length: size }, (_, count) => (count >= wanted ? 1 : 0));
  for (const { table, mostGoOn } of stages.toReversed()) {
    const after = reach;
    reach = Float64Array.from({ length: size }, (_, n) => expectation(table[n], after, mostGoOn ?? size));
  }
  return reach;
}

function expectation(row: Float64Array | undefined, after: Float64Array, most: number): number {
  let sum = 0;
  if (row) for (let k = 0; k < row.length; k += 1) sum += (row[k] ?? 0) * (after[Math.min(k, most)] ?? 0);
  return sum;
}

/** The fewest larvae that give at least `wanted` queens with the chance asked for. The chance never falls as larvae rise. */
export function larvaeNeeded(
  wanted: number,
  chance: number,
  stages: readonly FunnelStage[],
  most: number = MOST_LARVAE,
): LarvaeAnswer {
  const chances = chancesByGiven(wanted, stages).slice(0, most + 1);
  const larvae = chances.findIndex((reached) => reached >= chance - NOISE);
  if (larvae >= 0)
    return {
      kind: 'enough',
      larvae,
      chance: chances[larvae] ?? 0,
      chanceOfOneFewer: larvae === 0 ? 0 : (chances[larvae - 1] ?? 0),
    };
  const heldBackBy = stages.flatMap(({ mostGoOn }, index) => {
    if (mostGoOn === null) return [];
    const lifted = stages.map((stage, at) => (at === index ? { ...stage, mostGoOn: null } : stage));
    const reached = chancesByGiven(wanted, lifted)[most] ?? 0;
    return reached >= chance - NOISE ? [index] : [];
  });
  return { kind: 'notReachable', chance: chances.at(-1) ?? 0, heldBackBy };
}

/** The fewest boxes from which at least `wanted` queens come to lay with the chance asked for, every box given a queen. */
export function boxesNeeded(wanted: number, chance: number, mating: StageTable): number | null {
  for (let boxes = wanted; boxes < mating.length; boxes += 1) {
    const row = mating[boxes];
    let sum = 0;
    for (let k = boxes; k >= wanted; k -= 1) sum += row?.[k] ?? 0;
    if (sum >= chance - NOISE) return boxes;
  }
  return null;
}
