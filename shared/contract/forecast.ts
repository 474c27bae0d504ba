import { z } from 'zod';
import { IdField } from '../model/fields.ts';
import type { Certainty, WeighedStage } from './season.ts';

const Share = z.number().min(0.01).max(0.99);
const WhatIf = Share.nullable();

/** "I want so many laying queens, so surely." */
export const PlanChoice = z.object({
  wanted: z.int().min(1).max(100),
  /** How surely: 0.5 to 0.99. */
  chance: z.number().min(0.5).max(0.99),
  /** Group id of the method (a method or a copy of the person's own); null = a method never tried. */
  method: z.string().max(100).nullable(),
  /** A builder each; null = find the fewest that do. */
  batches: z.int().min(1).max(6).nullable(),
  /** The most cells one builder finishes; null = no limit. */
  cellsPerBuilder: z.int().min(1).max(200).nullable(),
  /** Mating boxes there are; null = as many as it takes. */
  boxes: z.int().min(1).max(400).nullable(),
  /** Larvae a batch; null = find the fewest. */
  larvaeEach: z.int().min(1).max(150).nullable(),
  /** "What if this stage had this rate"; null = as counted. */
  whatIf: z.object({ take: WhatIf, sealing: WhatIf, emergence: WhatIf, mating: WhatIf }),
  leaveOutPractice: z.boolean(),
});
export type PlanChoiceInput = z.infer<typeof PlanChoice>;

export interface PlanForm {
  readonly methods: readonly { readonly id: string; readonly label: string; readonly batches: number }[];
  readonly cellsPerBuilder: number;
  readonly freeBoxes: number;
}

/** A whole number with what may come instead. */
export interface ExpectedCount {
  readonly mean: number;
  /** 9 times in 10 between these. */
  readonly lower: number;
  readonly upper: number;
  /** Every second time between these. */
  readonly likelyFrom: number;
  readonly likelyTo: number;
  /** "9 chances in 10 of at least". */
  readonly atLeast: number;
}

export interface PlannedStageView {
  readonly stage: WeighedStage;
  readonly mean: number;
  readonly lower: number;
  readonly upper: number;
  /** Batches of the method that were counted at this stage. */
  readonly batches: number;
  /** Cells or queens lost here of 100 larvae, and about 9 times in 10 between lower and upper. */
  readonly lost: { readonly mean: number; readonly lower: number; readonly upper: number };
  /** Probability that this stage loses the most. */
  readonly largest: number;
  /** Laying queens gained of 100 larvae if the stage were as good as in the best third of batches. */
  readonly worth: number;
}

export interface PlanAnswer {
  readonly batches: number;
  /** null = not even the most larvae give the chance asked for. */
  readonly larvaeEach: number | null;
  readonly chance: number;
  readonly heldBackBy: readonly ('builder' | 'boxes')[];
  readonly boxes: number | null;
  readonly laying: ExpectedCount;
  /** Given, taken, sealed, emerged, laying to expect over all batches. */
  readonly onTheWay: readonly number[];
  readonly rows: readonly { readonly larvaeEach: number; readonly boxes: number | null; readonly chance: number }[];
  readonly stages: readonly PlannedStageView[];
  readonly layingPer100: number;
  /** Good takes went with good matings in this workbook: the range may be too narrow. */
  readonly stagesGoTogether: boolean;
}

export interface BarCount {
  readonly number: number;
  readonly came: number;
  readonly of: number;
}

export const BatchAsked = z.object({ batchId: IdField });

/** A batch against what its method led one to expect, and what is still to come. */
export interface BatchExpectation {
  readonly stages: readonly {
    readonly stage: WeighedStage;
    readonly of: number;
    readonly came: number;
    readonly expected: ExpectedCount;
    readonly standing: 'as-expected' | 'fewer' | 'more';
    /** Other batches of the method the expectation rests on; 0 = a method never tried. */
    readonly batches: number;
  }[];
  /** The best and the worst bar where they differ by more than luck; null where that cannot be said. */
  readonly bars: {
    readonly stage: 'take' | 'sealing';
    readonly better: BarCount;
    readonly worse: BarCount;
  } | null;
  readonly toCome: {
    readonly from: 'planned' | 'given' | 'taken' | 'sealed' | 'placed';
    readonly of: number;
    readonly proved: ExpectedCount;
  } | null;
}

/** Made-up counts of a class: how good is each, really? */
export const DrawnChoice = z.object({
  rows: z
    .array(z.object({ successes: z.int().min(0).max(200), of: z.int().min(1).max(200) }))
    .min(1)
    .max(18),
});

/** Ways to draw the range of one share: the score interval, quantiles of a belief, and one that is never too narrow. */
export const OTHER_RANGES = ['wilson', 'jeffreys', 'exact'] as const;
export type OtherRange = (typeof OTHER_RANGES)[number];

export interface DrawnAnswer {
  readonly rows: readonly {
    readonly plain: number;
    /** By the pocket-calculator rule, on the plain scale and on the evened one; null where it does not hold. */
    readonly byHand: number | null;
    readonly byHandEvened: number | null;
    /** By this workbook's own model, with its range about 9 times in 10. */
    readonly model: { readonly mean: number; readonly lower: number; readonly upper: number };
    /** The range of this batch alone, about 9 times in 10, drawn in other ways. */
    readonly others: Readonly<Record<OtherRange, { readonly lower: number; readonly upper: number }>>;
  }[];
  /** Part of each one's distance from the mean that the pocket-calculator rule keeps; null where it does not hold. */
  readonly kept: number | null;
}

export const HiveAsked = z.object({ colonyId: IdField });

/** A hive in one of its parts against all other hives in that part, stage by stage. */
export interface HiveStageStanding {
  readonly stage: WeighedStage;
  readonly batches: number;
  readonly mean: number;
  readonly lower: number;
  readonly upper: number;
  readonly otherBatches: number;
  readonly otherMean: number;
  /** Whether the hive or the rest does better, and how sure that is; null without other batches. */
  readonly against: {
    readonly better: 'hive' | 'rest';
    readonly certainty: Certainty;
    readonly probability: number;
  } | null;
}

export interface HiveStanding {
  readonly asBuilder: readonly HiveStageStanding[];
  readonly asMother: readonly HiveStageStanding[];
}
