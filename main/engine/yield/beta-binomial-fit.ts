import type { BatchCount } from './group-rates.ts';
import { nelderMead } from './nelder-mead.ts';

/** Batches of one kind taken together: their mean rate, and how alike they are. */
export interface BetaBinomialFit {
  readonly mean: number;
  /** Large = batches hardly differ; null = no sign that they differ at all. */
  readonly concentration: number | null;
  /** Log likelihood without the numbers of ways, which do not depend on the rates. */
  readonly logLikelihood: number;
}

/** Beyond this concentration the counts show no difference between batches. */
const NO_DIFFERENCE = 1e4;
const LARGEST_LOG = Math.log(1e8);

/**
 * Mean and concentration by matching moments: that of the batches' own shares, and the part of their variance that is
 * left (Gelman et al. 2013, Bayesian Data Analysis 3, 5.1). null with fewer than two batches or no variance.
 */
export function betaMoments(counts: readonly BatchCount[]): { readonly alpha: number; readonly beta: number } | null {
  const shares = counts.filter(({ of }) => of > 0).map(({ successes, of }) => successes / of);
  if (shares.length < 2) return null;
  const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const variance = shares.reduce((sum, share) => sum + (share - mean) ** 2, 0) / (shares.length - 1);
  const concentration = (mean * (1 - mean)) / variance - 1;
  return variance === 0 || concentration <= 0
    ? null
    : { alpha: mean * concentration, beta: (1 - mean) * concentration };
}

/** Most likely mean and concentration of a beta-binomial (Skellam 1948). null without any count. */
export function betaBinomialFit(counts: readonly BatchCount[]): BetaBinomialFit | null {
  const used = counts.filter(({ of }) => of > 0);
  if (used.length === 0) return null;
  const start = betaMoments(used);
  const total = used.reduce((sum, { of }) => sum + of, 0);
  const share = (used.reduce((sum, { successes }) => sum + successes, 0) + 0.5) / (total + 1);
  const { at, value } = nelderMead(
    ([logit = 0, logConcentration = 0]) => {
      const concentration = Math.exp(Math.min(LARGEST_LOG, logConcentration));
      const mean = 1 / (1 + Math.exp(-logit));
      return -logLikelihood(used, mean * concentration, (1 - mean) * concentration);
    },
    [Math.log(share / (1 - share)), Math.log(start ? start.alpha + start.beta : 20)],
  );
  const concentration = Math.exp(Math.min(LARGEST_LOG, at[1] ?? 0));
  return {
    mean: 1 / (1 + Math.exp(-(at[0] ?? 0))),
    concentration: concentration > NO_DIFFERENCE ? null : concentration,
    logLikelihood: -value,
  };
}

function logLikelihood(counts: readonly BatchCount[], a: number, b: number): number {
  let sum = 0;
  for (const { successes, of } of counts)
    sum += logRising(a, successes) + logRising(b, of - successes) - logRising(a + b, of);
  return sum;
}

/** log of start (start + 1) ... over `terms` factors: counts are whole, so no gamma function is needed. */
function logRising(start: number, terms: number): number {
  let sum = 0;
  for (let j = 0; j < terms; j += 1) sum += Math.log(start + j);
  return sum;
}

/** How far single batches lie from their mean, as a share (standard deviation); 0 when they show no difference. */
export const batchSwing = ({ mean, concentration }: BetaBinomialFit): number =>
  concentration === null ? 0 : Math.sqrt((mean * (1 - mean)) / (concentration + 1));
