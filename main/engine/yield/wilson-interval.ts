import normalQuantile from '@stdlib/stats-base-dists-normal-quantile';

/** A share's range, 0 to 1. */
export interface Interval {
  readonly lower: number;
  readonly upper: number;
}

/** "About 9 times in 10": the level used wherever nothing else is said. */
export const USUAL_LEVEL = 0.9;

/**
 * Wilson's score interval for x successes of n (Wilson 1927, J. Am. Stat. Assoc. 22:209), recommended for small n by
 * Brown, Cai & DasGupta 2001 (Statistical Science 16:101). null when n is 0.
 * For ONE batch only: summed over several batches any binomial interval is too narrow, because batches differ.
 * @param level chance that the range holds the true share, 0 to 1 exclusive.
 */
export function wilsonInterval(successes: number, n: number, level: number = USUAL_LEVEL): Interval | null {
  if (n === 0) return null;
  const z = normalQuantile(1 - (1 - level) / 2, 0, 1);
  const share = successes / n;
  const spread = 1 + (z * z) / n;
  const centre = (share + (z * z) / (2 * n)) / spread;
  const half = (z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n))) / spread;
  return { lower: Math.max(0, centre - half), upper: Math.min(1, centre + half) };
}
