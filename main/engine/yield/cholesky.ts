/** A small square matrix by rows. */
export type Matrix = readonly Float64Array[];

/** Lower root L of a positive definite matrix, L L' = matrix (Golub & Van Loan 2013, Matrix Computations, 4.2). */
export function cholesky(matrix: Matrix): Matrix {
  const root = matrix.map((row) => new Float64Array(row.length));
  matrix.forEach((row, i) => {
    for (let j = 0; j <= i; j += 1) {
      let rest = row[j] ?? 0;
      for (let k = 0; k < j; k += 1) rest -= (root[i]?.[k] ?? 0) * (root[j]?.[k] ?? 0);
      (root[i] as Float64Array)[j] = i === j ? Math.sqrt(rest) : rest / (root[j]?.[j] ?? 1);
    }
  });
  return root;
}

/** Solves L L' x = right. */
export function solve(root: Matrix, right: Float64Array): Float64Array {
  const x = right.slice();
  for (let i = 0; i < x.length; i += 1) {
    for (let k = 0; k < i; k += 1) x[i] = (x[i] ?? 0) - (root[i]?.[k] ?? 0) * (x[k] ?? 0);
    x[i] = (x[i] ?? 0) / (root[i]?.[i] ?? 1);
  }
  for (let i = x.length - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < x.length; k += 1) x[i] = (x[i] ?? 0) - (root[k]?.[i] ?? 0) * (x[k] ?? 0);
    x[i] = (x[i] ?? 0) / (root[i]?.[i] ?? 1);
  }
  return x;
}

/** Inverse of the matrix whose root is given. */
export const inverse = (root: Matrix): Matrix =>
  root.map((_row, at) => {
    const unit = new Float64Array(root.length);
    unit[at] = 1;
    return solve(root, unit);
  });
