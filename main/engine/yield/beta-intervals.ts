import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { type Interval, USUAL_LEVEL } from './wilson-interval.ts';

/**
 * Jeffreys' equal-tailed interval: quantiles of Beta(x + 1/2, n - x + 1/2), with 0 at x = 0 and 1 at x = n (Brown, Cai &
 * DasGupta 2001, Statistical Science 16:101). Kept as a named alternative to Wilson's; one batch only. null when n is 0.
 */
export function jeffreysInterval(successes: number, n: number, level: number = USUAL_LEVEL): Interval | null {
  if (n === 0) return null;
  const tail = (1 - level) / 2;
  const [a, b] = [successes + 0.5, n - successes + 0.5];
  return {
    lower: successes === 0 ? 0 : betaQuantile(tail, a, b),
    upper: successes === n ? 1 : betaQuantile(1 - tail, a, b),
  };
}

/**
 * Clopper & Pearson's interval (1934, Biometrika 26:404): never too narrow, and wider than it has to be. For comparison
 * with other tools; one batch only. null when n is 0.
 */
export function clopperPearsonInterval(successes: number, n: number, level: number = USUAL_LEVEL): Interval | null {
  if (n === 0) return null;
  const tail = (1 - level) / 2;
  return {
    lower: successes === 0 ? 0 : betaQuantile(tail, successes, n - successes + 1),
    upper: successes === n ? 1 : betaQuantile(1 - tail, successes + 1, n - successes),
  };
}
