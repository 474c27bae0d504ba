import { z } from 'zod';
import type { CountedStage } from './batch.ts';
import { IdField } from './fields.ts';

const Sum = z.int().min(0).nullable();

/**
 * What a batch came to, stage by stage. Kept beside the batch and recomputed in the same transaction as every count,
 * look or placement, so that a season can be compared without reading a single cell. null = not known (yet), never 0.
 */
export const BatchTally = z.object({
  batchId: IdField,
  given: Sum,
  taken: Sum,
  /** Taken cells that went on towards sealing: taken less those deliberately removed. */
  enteredSealing: Sum,
  sealed: Sum,
  /** Cells put in boxes. */
  placed: z.int().min(0),
  /** Placed cells of which it is known whether a queen came out, and how many did. */
  emergenceKnown: z.int().min(0),
  emerged: z.int().min(0),
  /** Emerged queens of which it is known whether they came to lay worker brood, and how many did. */
  matingKnown: z.int().min(0),
  proved: z.int().min(0),
  /** Queens seen laying so far, proved or not. */
  laying: z.int().min(0),
});
export type BatchTally = z.infer<typeof BatchTally>;

/** One stage of a batch added up over its bars, and how many of them were counted at it. */
export interface CountSum {
  readonly bars: number;
  readonly cells: number;
}

/** A batch's counts added up: how many bars it has, and each stage that any of them was counted at. */
export interface BarSums {
  readonly bars: number;
  readonly stages: Partial<Record<CountedStage, CountSum>>;
}
