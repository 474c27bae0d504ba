/**
 * Probabilities of 0 to n successes when the rate differs from batch to batch: beta-binomial with the given mean and
 * concentration. By the ratio recursion, without gamma functions; started at 0, which is exact for the counts of a batch.
 * @param n at most a few hundred.
 */
export function betaBinomial(n: number, mean: number, concentration: number): Float64Array {
  const a = mean * concentration;
  const b = concentration - a;
  const probabilities = new Float64Array(n + 1);
  let first = 1;
  for (let trial = 0; trial < n; trial += 1) first *= (b + trial) / (concentration + trial);
  probabilities[0] = first;
  for (let k = 0; k < n; k += 1)
    probabilities[k + 1] = ((probabilities[k] ?? 0) * ((n - k) / (k + 1)) * (a + k)) / (b + n - k - 1);
  return probabilities;
}
