/** Bases of the dimensions: the first primes. */
const BASES = [2, 3, 5, 7, 11, 13, 17, 19] as const;
const HALF = 256;

/**
 * 512 fixed points in the unit cube: 256 of the Halton sequence (Halton 1960, Numerische Mathematik 2:84) and their
 * mirrors. They stand in for random draws, so that an answer does not flicker.
 * @param dimensions 1 to 8.
 */
export function haltonPoints(dimensions: number): readonly (readonly number[])[] {
  const points = Array.from({ length: HALF }, (_, index) =>
    BASES.slice(0, dimensions).map((base) => radicalInverse(index + 1, base)),
  );
  return [...points, ...points.map((point) => point.map((u) => 1 - u))];
}

/** The digits of a whole number in a base, mirrored at the point. */
function radicalInverse(index: number, base: number): number {
  let [left, scale, value] = [index, 1 / base, 0];
  while (left > 0) {
    value += (left % base) * scale;
    left = Math.floor(left / base);
    scale /= base;
  }
  return value;
}
