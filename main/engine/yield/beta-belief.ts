import betaln from '@stdlib/math-base-special-betaln';
import betaCdf from '@stdlib/stats-base-dists-beta-cdf';
import type { BatchCount } from './group-rates.ts';

/** A belief about a rate in the form Beta(a, b). */
export interface BetaBelief {
  readonly a: number;
  readonly b: number;
}

/** A belief after a count (the binomial's conjugate; Gelman et al. 2013, Bayesian Data Analysis 3, 2.4). */
export const afterCount = ({ a, b }: BetaBelief, { successes, of }: BatchCount): BetaBelief => ({
  a: a + successes,
  b: b + of - successes,
});

export const meanOf = ({ a, b }: BetaBelief): number => a / (a + b);
export const deviationOf = ({ a, b }: BetaBelief): number => Math.sqrt((a * b) / (a + b + 1)) / (a + b);

/** Jeffreys' belief before any count. */
export const JEFFREYS: BetaBelief = { a: 0.5, b: 0.5 };

const REACH = 45;
const STEP = 0.05;

/**
 * Probability that one rate is higher than another, each believed as a beta, by the trapezoid rule on the logit (reach and
 * step measured against closed forms: 1e-9). For single counts made side by side, such as bars of one batch; batches
 * differ among themselves and need groupRates.
 */
export function probabilityGreater(one: BetaBelief, other: BetaBelief): number {
  const scale = betaln(one.a, one.b);
  let sum = 0;
  for (let at = -REACH; at <= REACH; at += STEP) {
    const [rate, rest] = [1 / (1 + Math.exp(-at)), 1 / (1 + Math.exp(at))];
    const density = Math.exp(one.a * Math.log(rate) + one.b * Math.log(rest) - scale);
    if (density > 0) sum += density * betaCdf(rate, other.a, other.b);
  }
  return Math.min(1, sum * STEP);
}
