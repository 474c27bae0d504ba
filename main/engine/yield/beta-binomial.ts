/** Below this the recursion from 0 would lose digits to underflow; it then starts at the most likely count instead. */
const SAFE_START = 1e-250;

/**
 * Probabilities of 0 to n successes when the rate differs from batch to batch: beta-binomial with the given mean and
 * concentration (Skellam 1948, J. R. Stat. Soc. B 10:257). By the ratio recursion, without gamma functions.
 * @param n at most a few hundred. @param mean of the rate, 0 to 1. @param concentration > 0; large = batches hardly differ.
 */
export function betaBinomial(n: number, mean: number, concentration: number): Float64Array {
  const a = mean * concentration;
  const b = concentration - a;
  const probabilities = new Float64Array(n + 1);
  let first = 1;
  for (let trial = 0; trial < n; trial += 1) first *= (b + trial) / (concentration + trial);
  if (!(first > SAFE_START)) return fromTheTop(n, a, b, probabilities);
  probabilities[0] = first;
  let last = first;
  for (let k = 0; k < n; k += 1) {
    last *= ((n - k) * (a + k)) / ((k + 1) * (b + n - k - 1));
    probabilities[k + 1] = last;
  }
  return probabilities;
}

/** The same recursion up and down from the most likely count, then made to sum to 1. */
function fromTheTop(n: number, a: number, b: number, probabilities: Float64Array): Float64Array {
  const mode = Math.min(n, Math.max(0, Math.round((n * a) / (a + b))));
  probabilities[mode] = 1;
  let sum = 1;
  let last = 1;
  for (let k = mode; k < n && last > 0; k += 1) {
    last *= ((n - k) * (a + k)) / ((k + 1) * (b + n - k - 1));
    probabilities[k + 1] = last;
    sum += last;
  }
  last = 1;
  for (let k = mode; k > 0 && last > 0; k -= 1) {
    last *= (k * (b + n - k)) / ((n - k + 1) * (a + k - 1));
    probabilities[k - 1] = last;
    sum += last;
  }
  for (let k = 0; k <= n; k += 1) probabilities[k] = (probabilities[k] ?? 0) / sum;
  return probabilities;
}
