import type { ComparedBatch, CompareRow, RateStage, WeighedGroup } from '../../shared/contract/season.ts';

/** One group as the chart draws it: a dot with its range, and a tick for every batch. Shares are in per cent. */
export interface CompareDot {
  readonly groupId: string;
  readonly label: string;
  readonly percent: number;
  readonly lower: number;
  readonly upper: number;
  readonly successes: number;
  readonly of: number;
  readonly batches: number;
  readonly ticks: readonly { readonly batch: string; readonly percent: number; readonly of: number }[];
}

/**
 * Groups with figures for the stage, best first. Where the stage has been weighed, dot and range are the weighed ones;
 * until then, and for the whole way, the plain share and its range. Ticks come when the batches behind have been read.
 */
export function compareDots(
  rows: readonly CompareRow[],
  stage: RateStage,
  nameOf: (row: CompareRow) => string,
  weighed: readonly WeighedGroup[] = [],
  behind: readonly ComparedBatch[] = [],
): readonly CompareDot[] {
  const batchesOf = Map.groupBy(behind, ({ groupId }) => groupId);
  return rows
    .flatMap((row): readonly CompareDot[] => {
      const figure = row.rates[stage];
      if (figure.rate === null || figure.interval === null) return [];
      const group = weighed.find((one) => one.groupId === row.groupId);
      const ticks = (batchesOf.get(row.groupId) ?? []).flatMap(({ batch, counts }) => {
        const count = counts.find((one) => one.stage === stage);
        return count ? [{ batch, percent: (100 * count.successes) / count.of, of: count.of }] : [];
      });
      return [
        {
          groupId: row.groupId,
          label: nameOf(row),
          percent: 100 * (group?.mean ?? figure.rate),
          lower: 100 * (group?.lower ?? figure.interval.lower),
          upper: 100 * (group?.upper ?? figure.interval.upper),
          successes: figure.successes,
          of: figure.of,
          batches: figure.batches,
          ticks,
        },
      ];
    })
    .toSorted((a, b) => b.percent - a.percent);
}
