import { betaBinomial } from './beta-binomial.ts';
import { convolve } from './convolve.ts';
import type { RateNode } from './rate-nodes.ts';

/**
 * Successes in several batches of n each that share one unknown rate: for each possible rate the batches are added up,
 * then averaged. Adding up the averaged batches instead would take the shared doubt for independent luck.
 */
export function nextBatches(nodes: readonly RateNode[], n: number, batches: number): Float64Array {
  const probabilities = new Float64Array(n * batches + 1);
  for (const { rate, concentration, weight } of nodes) {
    const one = betaBinomial(n, rate, concentration);
    let all = one;
    for (let batch = 1; batch < batches; batch += 1) all = convolve(all, one);
    for (let k = 0; k < all.length; k += 1) probabilities[k] = (probabilities[k] ?? 0) + weight * (all[k] ?? 0);
  }
  return probabilities;
}
