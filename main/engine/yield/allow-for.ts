import type { CrossedBatch } from './crossed-mode.ts';
import { connected, crossedRates } from './crossed-rates.ts';

/** Fewer batches than this cannot carry two factors at once. */
const FEWEST_BATCHES = 6;

/** What can be said of two levels of a factor when the other factor is allowed for. */
export type Allowed =
  | { readonly kind: 'too-few' }
  /** The two were never tried, directly or by way of others, at the same level of the other factor. */
  | { readonly kind: 'not-connected' }
  | { readonly kind: 'weighed'; readonly probability: number; readonly rates: readonly number[] };

/** Levels `first` and `second` of the first factor compared allowing for the second factor, where that can be done. */
export function allowFor(
  batches: readonly CrossedBatch[],
  levels: readonly [number, number],
  first: number,
  second: number,
): Allowed {
  const counted = batches.filter(({ of }) => of > 0);
  if (levels[0] < 2 || levels[1] < 2 || counted.length < FEWEST_BATCHES) return { kind: 'too-few' };
  const parts = connected(counted, levels);
  if (parts[first] !== parts[second]) return { kind: 'not-connected' };
  const { probabilityBetter, rates } = crossedRates(counted, levels);
  return { kind: 'weighed', probability: probabilityBetter[first]?.[second] ?? 0.5, rates };
}
