/** What can be said of a count: whole numbers, never a bare share. */
export interface CountSummary {
  readonly mean: number;
  readonly variance: number;
  readonly chanceOfNone: number;
  /** 5th, 25th, 50th, 75th and 95th hundredth: the smallest count at or below which that share lies. */
  readonly q05: number;
  readonly q25: number;
  readonly q50: number;
  readonly q75: number;
  readonly q95: number;
  /** "9 chances in 10 of at least": the largest count with P(count or more) >= 0.9. */
  readonly sure90: number;
}

/** Probability noise allowed where a sum is compared with a limit. */
const NOISE = 1e-12;

export function summariseCount(probabilities: Float64Array): CountSummary {
  let mean = 0;
  let square = 0;
  probabilities.forEach((chance, k) => {
    mean += k * chance;
    square += k * k * chance;
  });
  return {
    mean,
    variance: Math.max(0, square - mean * mean),
    chanceOfNone: probabilities[0] ?? 0,
    q05: countQuantile(probabilities, 0.05),
    q25: countQuantile(probabilities, 0.25),
    q50: countQuantile(probabilities, 0.5),
    q75: countQuantile(probabilities, 0.75),
    q95: countQuantile(probabilities, 0.95),
    sure90: sureCount(probabilities, 0.9),
  };
}

/** P(count or more), summed from the far end so that small tails keep their digits. */
export function chanceOfAtLeast(probabilities: Float64Array, count: number): number {
  let sum = 0;
  for (let k = probabilities.length - 1; k >= Math.max(0, count); k -= 1) sum += probabilities[k] ?? 0;
  return Math.min(1, sum);
}

/** Smallest count at or below which the given share of the probability lies. */
export function countQuantile(probabilities: Float64Array, probability: number): number {
  let sum = 0;
  for (let k = 0; k < probabilities.length; k += 1) {
    sum += probabilities[k] ?? 0;
    if (sum >= probability - NOISE) return k;
  }
  return probabilities.length - 1;
}

/** The largest count that is reached or passed with at least the given chance. */
export function sureCount(probabilities: Float64Array, chance: number): number {
  let sum = 0;
  for (let k = probabilities.length - 1; k > 0; k -= 1) {
    sum += probabilities[k] ?? 0;
    if (sum >= chance - NOISE) return k;
  }
  return 0;
}
