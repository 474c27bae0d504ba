import type { CompareRow, RateStage } from '../../shared/contract/season.ts';

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

/** Groups with figures for the stage, best first; groups without any have nothing to draw. */
export function compareDots(
  rows: readonly CompareRow[],
  stage: RateStage,
  nameOf: (row: CompareRow) => string,
): readonly CompareDot[] {
  return rows
    .flatMap((row): readonly CompareDot[] => {
      const figure = row.rates[stage];
      if (figure.rate === null || figure.interval === null) return [];
      const ticks = row.batchPoints
        .filter((point) => point.stage === stage)
        .map((point) => ({ batch: point.batch, percent: (100 * point.successes) / point.of, of: point.of }));
      return [
        {
          groupId: row.groupId,
          label: nameOf(row),
          percent: 100 * figure.rate,
          lower: 100 * figure.interval.lower,
          upper: 100 * figure.interval.upper,
          successes: figure.successes,
          of: figure.of,
          batches: figure.batches,
          ticks,
        },
      ];
    })
    .toSorted((a, b) => b.percent - a.percent);
}

/** What the eye should take from the chart, as a fact about the two best groups. */
export type Finding =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'one'; readonly dot: CompareDot }
  | { readonly kind: 'apart' | 'touching'; readonly best: CompareDot; readonly second: CompareDot };

export function findingOf(dots: readonly CompareDot[]): Finding {
  const [best, second] = dots;
  if (!best) return { kind: 'nothing' };
  if (!second) return { kind: 'one', dot: best };
  return { kind: best.lower > second.upper ? 'apart' : 'touching', best, second };
}
