import { betaBinomial } from './beta-binomial.ts';
import { concentrationOf, rateGrid, spreadNodes } from './rate-grid.ts';

/** Probabilities of 0 to n successes in the next batch, averaged over all that is not known about the group. */
export function nextBatch(joint: readonly Float64Array[], n: number): Float64Array {
  const nodes = joint[0]?.length ?? 0;
  const grid = rateGrid(16 / (nodes - 1));
  const probabilities = new Float64Array(n + 1);
  joint.forEach((weights, within) => {
    const concentration = concentrationOf(spreadNodes()[within] ?? 0.5);
    weights.forEach((weight, node) => {
      if (weight < 1e-9) return;
      betaBinomial(n, grid.rates[node] ?? 0.5, concentration).forEach((probability, k) => {
        probabilities[k] = (probabilities[k] ?? 0) + weight * probability;
      });
    });
  });
  const total = probabilities.reduce((sum, share) => sum + share, 0);
  return probabilities.map((share) => share / total);
}

/** Smallest count at or below which the given share of the probability lies. */
export function countQuantile(probabilities: Float64Array, probability: number): number {
  let sum = 0;
  for (let k = 0; k < probabilities.length; k += 1) {
    sum += probabilities[k] ?? 0;
    if (sum >= probability - 1e-12) return k;
  }
  return probabilities.length - 1;
}
