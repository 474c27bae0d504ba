/** Probabilities of the sum of two independent counts. */
export function convolve(a: Float64Array, b: Float64Array): Float64Array {
  const sum = new Float64Array(a.length + b.length - 1);
  for (let i = 0; i < a.length; i += 1) {
    const chance = a[i] ?? 0;
    if (chance === 0) continue;
    for (let j = 0; j < b.length; j += 1) sum[i + j] = (sum[i + j] ?? 0) + chance * (b[j] ?? 0);
  }
  return sum;
}
