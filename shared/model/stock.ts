import { z } from 'zod';
import { IdField, IsoDayField, NoteField } from './fields.ts';

/** Traits scored on the open scales of four steps, 4 the best; what each step means is in shared/biology/stock-traits. */
export const STOCK_TRAITS = ['gentleness', 'calmness', 'swarming'] as const;
export type StockTrait = (typeof STOCK_TRAITS)[number];

export const StockScore = z.object({
  id: IdField,
  colonyId: IdField,
  trait: z.enum(STOCK_TRAITS),
  scoredOn: IsoDayField,
  /** 1 to 4, half points allowed. */
  score: z.number().min(1).max(4).multipleOf(0.5),
  note: NoteField.nullable(),
});
export type StockScore = z.infer<typeof StockScore>;

/**
 * Counted and weighed things. What `counted` and `outOf` are: pin and freeze test, cells cleared of cells tested; mite
 * wash, mites of bees; mite fall, mites over days; honey, kilograms (no `outOf`).
 */
export const STOCK_TESTS = ['pin-test', 'freeze-test', 'mite-wash', 'mite-fall', 'honey'] as const;
export type StockTestKind = (typeof STOCK_TESTS)[number];

export const StockTest = z.object({
  id: IdField,
  colonyId: IdField,
  kind: z.enum(STOCK_TESTS),
  testedOn: IsoDayField,
  counted: z.number().min(0).max(100_000),
  outOf: z.number().positive().max(100_000).nullable(),
  /** Hours from piercing or freezing to counting. */
  hours: z.number().positive().max(1000).nullable(),
  note: NoteField.nullable(),
});
export type StockTest = z.infer<typeof StockTest>;

/** How a breeder and a drone mother are kin. */
export const KINSHIPS = ['same-hive', 'mother-daughter', 'sisters', 'same-line'] as const;
export type Kinship = (typeof KINSHIPS)[number];
