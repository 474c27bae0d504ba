import { z } from 'zod';
import { SeasonField } from '../model/fields.ts';
import type { StageLoss } from '../model/loss.ts';

export const COMPARE_FACTORS = ['method', 'builder', 'breeder', 'season', 'month', 'boxType'] as const;
export type CompareFactor = (typeof COMPARE_FACTORS)[number];

export const CompareSeason = z.object({
  factor: z.enum(COMPARE_FACTORS),
  /** A second factor to part the groups by; null = one factor only. */
  and: z.enum(COMPARE_FACTORS).nullable(),
  /** null = all seasons. */
  season: z.int().nullable(),
  leaveOutPractice: z.boolean(),
});

/** What was lost in the compared batches, stage by stage. */
export interface SeasonLosses {
  readonly stages: readonly StageLoss[];
}

/** The season on paper. */
export const PrintSeasonReport = z.object({
  season: SeasonField,
  paper: z.enum(['a4', 'letter']),
  large: z.boolean(),
});

export type SeasonRefusal = {
  readonly kind: 'season-without-batches';
  readonly field: 'season';
  readonly season: number;
};

export const ExportFigures = CompareSeason.extend({ separator: z.enum(['comma', 'semicolon']) });

/** The stages in which batches have a rate of their own; the whole way is their product. */
export const WEIGHED_STAGES = ['take', 'sealing', 'emergence', 'mating'] as const;
export type WeighedStage = (typeof WEIGHED_STAGES)[number];
/** The farthest look ahead; the doubt about the rate is shared by all of them. */
export const MOST_AHEAD = 3;
export const CompareStage = CompareSeason.extend({
  stage: z.enum(WEIGHED_STAGES),
  /** The factor whose mix is allowed for beside the plain comparison; null = none. */
  allowingFor: z.enum(COMPARE_FACTORS).nullable(),
  /** How many next batches of the best group to look ahead. */
  ahead: z.int().min(1).max(MOST_AHEAD),
});

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
  readonly stage: WeighedStage;
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
    /** How far apart they lie, as shares; about 9 times in 10 between lower and upper. */
    readonly difference: { readonly mean: number; readonly lower: number; readonly upper: number };
    /** It is fairly sure that any difference is too small to act on. */
    readonly noMatter: boolean;
    /** How far single batches of the better one lie from its mean, as a share; 0 = no sign that they differ, null = too few. */
    readonly swing: number | null;
    /** What the next batches of the better one, of its usual size, should come to together: 9 times in 10 between these. */
    readonly next: {
      readonly batches: number;
      readonly of: number;
      readonly lower: number;
      readonly upper: number;
    };
    /** The same two allowing for another factor; null when none was asked for. */
    readonly allowing: AllowedComparison | null;
  } | null;
}

/** Two groups compared allowing for the mix of another factor. */
export type AllowedComparison =
  | { readonly kind: 'too-few' | 'not-connected'; readonly factor: CompareFactor }
  | {
      readonly kind: 'weighed';
      readonly factor: CompareFactor;
      /** The group that does better when the other factor is allowed for. */
      readonly better: string;
      readonly probability: number;
      readonly certainty: Certainty;
      /** It turns the plain comparison round, and one of the two is fairly sure. */
      readonly disagrees: boolean;
    };

/** How many more batches of each of the leading two would settle which is better. */
export interface Settling {
  /** null = more than `most` each. */
  readonly more: number | null;
  readonly most: number;
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

/** One factor's part of a group: a key or a name of the person's own. */
export interface GroupPart {
  readonly factor: CompareFactor;
  readonly id: string;
  readonly label: string;
}

export interface CompareRow {
  readonly groupId: string;
  /** What the person calls it: method key, hive code, season, month number or box type key; both with two factors. */
  readonly label: string;
  readonly parts: readonly GroupPart[];
  readonly batches: number;
  readonly rates: Readonly<Record<RateStage, RateFigure>>;
}

/** One batch behind a comparison, with the stages that were counted in it. */
export interface ComparedBatch {
  readonly groupId: string;
  readonly batchId: string;
  readonly batch: string;
  readonly counts: readonly { readonly stage: RateStage; readonly successes: number; readonly of: number }[];
}

export interface SeasonComparison {
  readonly factor: CompareFactor;
  readonly season: number | null;
  readonly seasons: readonly number[];
  readonly rows: readonly CompareRow[];
  readonly runningLeftOut: number;
}
