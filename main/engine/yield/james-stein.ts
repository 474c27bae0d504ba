/** Shares drawn towards their common mean, and how much of each one's distance from it is kept or taken away. */
export interface Drawn {
  /** Part of the distance from the mean that is kept, 0 to 1. */
  readonly kept: number;
  readonly rates: readonly number[];
}

/** The estimate needs four groups at least to be better than the plain shares. */
const FEWEST = 4;

/**
 * James and Stein's estimate of several shares of the same number (Efron & Morris 1977, Scientific American 236:119): each is
 * drawn to the mean of all by the same part. The oldest proof that groups should borrow strength; shown for teaching, where
 * it can be followed with a pocket calculator. null with fewer than four groups.
 * @param of the number behind each share, the same for all.
 */
export function jamesStein(successes: readonly number[], of: number): Drawn | null {
  if (successes.length < FEWEST || of <= 0) return null;
  const shares = successes.map((count) => count / of);
  const mean = meanOf(shares);
  return drawTo(shares, mean, (mean * (1 - mean)) / of);
}

/**
 * The same on the scale on which every share is about equally uncertain, sqrt(n) arcsin(2 p - 1) with variance 1 (Efron &
 * Morris 1975, J. Am. Stat. Assoc. 70:311), and back.
 */
export function jamesSteinArcsine(successes: readonly number[], of: number): Drawn | null {
  if (successes.length < FEWEST || of <= 0) return null;
  const scaled = successes.map((count) => Math.sqrt(of) * Math.asin((2 * count) / of - 1));
  const drawn = drawTo(scaled, meanOf(scaled), 1);
  return { kept: drawn.kept, rates: drawn.rates.map((value) => (Math.sin(value / Math.sqrt(of)) + 1) / 2) };
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function drawTo(values: readonly number[], mean: number, variance: number): Drawn {
  const square = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const kept = square === 0 ? 0 : Math.max(0, 1 - ((values.length - 3) * variance) / square);
  return { kept, rates: values.map((value) => mean + kept * (value - mean)) };
}
