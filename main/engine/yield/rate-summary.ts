import type { RateGrid } from './rate-grid.ts';

/** What is known of a rate: 9 times in 10 it lies between `lower` and `upper`. */
export interface RateSummary {
  readonly mean: number;
  readonly deviation: number;
  readonly lower: number;
  readonly median: number;
  readonly upper: number;
}

/** Mean, deviation and the 5th, 50th and 95th hundredth of a density on the grid (which need not sum to exactly 1). */
export function summarise(grid: RateGrid, density: Float64Array): RateSummary {
  const total = density.reduce((sum, share) => sum + share, 0) || 1;
  let mean = 0;
  let square = 0;
  density.forEach((share, node) => {
    const rate = grid.rates[node] ?? 0;
    mean += (share / total) * rate;
    square += (share / total) * rate * rate;
  });
  const at = (probability: number) => quantile(grid, density, total, probability);
  return {
    mean,
    deviation: Math.sqrt(Math.max(0, square - mean * mean)),
    lower: at(0.05),
    median: at(0.5),
    upper: at(0.95),
  };
}

/** The rate below which the given share of a density on the grid lies (the density need not sum to exactly 1). */
export const densityQuantile = (grid: RateGrid, density: Float64Array, probability: number): number =>
  quantile(grid, density, density.reduce((sum, share) => sum + share, 0) || 1, probability);

/** Linear between the nodes in the logit, of the cumulative sum taken at the middle of each node. */
function quantile(grid: RateGrid, density: Float64Array, total: number, probability: number): number {
  let sum = 0;
  let lastLogit = grid.logits[0] ?? 0;
  let lastCumulative = 0;
  for (let node = 0; node < density.length; node += 1) {
    const share = (density[node] ?? 0) / total;
    const cumulative = sum + share / 2;
    const logit = grid.logits[node] ?? 0;
    if (cumulative >= probability) {
      const part = cumulative === lastCumulative ? 0 : (probability - lastCumulative) / (cumulative - lastCumulative);
      return 1 / (1 + Math.exp(-(lastLogit + part * (logit - lastLogit))));
    }
    sum += share;
    lastLogit = logit;
    lastCumulative = cumulative;
  }
  return grid.rates.at(-1) ?? 1;
}
