import { z } from 'zod';

export const COMPARE_FACTORS = ['method', 'builder', 'breeder', 'season', 'month', 'boxType'] as const;
export type CompareFactor = (typeof COMPARE_FACTORS)[number];

export const CompareSeason = z.object({
  factor: z.enum(COMPARE_FACTORS),
  /** null = all seasons. */
  season: z.int().nullable(),
  leaveOutPractice: z.boolean(),
});

/** The stages in which batches have a rate of their own; the whole way is their product. */
export const WEIGHED_STAGES = ['take', 'sealing', 'emergence', 'mating'] as const;
export const CompareStage = CompareSeason.extend({ stage: z.enum(WEIGHED_STAGES) });

/** How sure it is that one group is better than another; the words are in shared/text. */
export const CERTAINTIES = ['cannot-tell', 'leaning', 'probably', 'very-likely', 'as-good-as-certain'] as const;
export type Certainty = (typeof CERTAINTIES)[number];

export interface WeighedGroup {
  readonly groupId: string;
  readonly label: string;
  readonly batches: number;
  /** Mean and about-9-in-10 range of the group's true share, allowing for how much batches differ. */
  readonly mean: number;
  readonly lower: number;
  readonly upper: number;
  readonly probabilityBest: number;
}

export interface StageComparison {
  readonly stage: (typeof WEIGHED_STAGES)[number];
  /** Best mean first. */
  readonly groups: readonly WeighedGroup[];
  /** The two best means against each other; null with fewer than two groups. */
  readonly lead: {
    readonly better: string;
    readonly other: string;
    readonly probability: number;
    readonly certainty: Certainty;
    /** Named the best only when that is at least nine tenths sure and rests on three batches. */
    readonly isBest: boolean;
  } | null;
}

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
