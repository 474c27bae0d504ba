import { z } from 'zod';
import { IdField } from './fields.ts';

/** Where cells or queens of a batch are lost: not taken, not sealed, not emerged, emerged but not proved. */
export const LOSS_STAGES = ['taken', 'sealed', 'emerged', 'proved'] as const;
export type LossStage = (typeof LOSS_STAGES)[number];

/** Why, as beekeepers tell losses apart; common practice, no source. A drone-layer is not among them: the looks say so. */
export const LOSS_REASONS = [
  'builder-not-ready',
  'larvae-harmed',
  'drowned',
  'chilled',
  'starved',
  'torn-down',
  'dead-in-cell',
  'damaged',
  'mating-flight',
  'killed',
  'absconded',
  'robbed',
  'other',
] as const;
export type LossReason = (typeof LOSS_REASONS)[number];

/** The reasons that make sense at each stage, in the order in which they are offered. */
export const REASONS_AT: Readonly<Record<LossStage, readonly LossReason[]>> = {
  taken: ['builder-not-ready', 'larvae-harmed', 'drowned', 'chilled', 'torn-down', 'other'],
  sealed: ['torn-down', 'chilled', 'starved', 'other'],
  emerged: ['dead-in-cell', 'torn-down', 'chilled', 'damaged', 'other'],
  proved: ['mating-flight', 'killed', 'absconded', 'robbed', 'starved', 'chilled', 'other'],
};

/** Twenty bars of two hundred cells. */
export const MOST_LOST = 4_000;

/** How many cells or queens of a batch were lost at a stage for one reason. No row = no reason is known. */
export const Loss = z.object({
  id: IdField,
  batchId: IdField,
  stage: z.enum(LOSS_STAGES),
  reason: z.enum(LOSS_REASONS),
  cells: z.int().min(1).max(MOST_LOST),
});
export type Loss = z.infer<typeof Loss>;

/** What was lost at one stage, of one batch or of several, and how much of it has a reason: whole cells or queens. */
export interface StageLoss {
  readonly stage: LossStage;
  /** Of how many that entered the stage and of which it is known what became of them. */
  readonly of: number;
  readonly lost: number;
  /** As typed by the person, most first. */
  readonly reasons: readonly { readonly reason: LossReason; readonly cells: number }[];
  /** Drone-layers, which the looks tell; 0 at all earlier stages. */
  readonly droneLayers: number;
  /** Lost without a known reason; never below 0. */
  readonly unknown: number;
  /** By how many the reasons are more than the losses, since a count was corrected later; 0 as a rule. */
  readonly tooMany: number;
}
