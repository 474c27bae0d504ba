import { z } from 'zod';

export const COMPARE_FACTORS = ['method', 'builder', 'breeder', 'season', 'month', 'boxType'] as const;
export type CompareFactor = (typeof COMPARE_FACTORS)[number];

export const CompareSeason = z.object({
  factor: z.enum(COMPARE_FACTORS),
  /** null = all seasons. */
  season: z.int().nullable(),
  leaveOutPractice: z.boolean(),
});

export const RATE_STAGES = ['take', 'sealing', 'emergence', 'mating', 'through'] as const;
export type RateStage = (typeof RATE_STAGES)[number];

/** A share with everything it rests on; never shown without them. */
export interface RateFigure {
  readonly successes: number;
  readonly of: number;
  readonly batches: number;
  /** successes / of, 0 to 1; null when `of` is 0. */
  readonly rate: number | null;
  /** About 9 times in 10 the true share lies in here; null when nothing was counted. */
  readonly interval: { readonly lower: number; readonly upper: number } | null;
}

export interface CompareRow {
  readonly groupId: string;
  /** What the person calls it: method key, hive code, season, month number or box type key. */
  readonly label: string;
  readonly batchIds: readonly string[];
  readonly rates: Readonly<Record<RateStage, RateFigure>>;
  /** One point per batch and stage, for the ticks under the bar. */
  readonly batchPoints: readonly {
    readonly batchId: string;
    readonly batch: string;
    readonly stage: RateStage;
    readonly successes: number;
    readonly of: number;
  }[];
}

export interface SeasonComparison {
  readonly factor: CompareFactor;
  readonly season: number | null;
  readonly seasons: readonly number[];
  readonly rows: readonly CompareRow[];
  readonly runningLeftOut: number;
}
