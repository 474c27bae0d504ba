/** A count to expect, and between which numbers it lies about 9 times in 10. */
export interface Forecast {
  readonly mean: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * Several batches together. Means add up. The ends are added too, as if all batches went badly, or all well, at once:
 * wider than batches with a luck of their own would give, but they share weather, hand and what is not known of the
 * rates, and a range that is too narrow promises queens that do not come. Our own choice.
 */
export function sumForecasts(forecasts: readonly Forecast[]): Forecast {
  const sum = (of: (one: Forecast) => number): number => forecasts.reduce((total, one) => total + of(one), 0);
  return { mean: sum(({ mean }) => mean), lower: sum(({ lower }) => lower), upper: sum(({ upper }) => upper) };
}
