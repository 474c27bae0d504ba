import { z } from 'zod';
import { CodeField, IdField, IsoDayField, NoteField } from './fields.ts';
import { BOX_TYPES } from './method.ts';

/** A small hive in which one queen is mated. */
export const MatingBox = z.object({
  id: IdField,
  code: CodeField,
  yardId: IdField.nullable(),
  /** Row or landmark in the person's words: "fence". */
  row: z.string().trim().max(30).nullable(),
  /** Place in walking order; screens and sheets list boxes by it. */
  walkOrder: z.int().min(0).max(100_000),
  boxType: z.enum(BOX_TYPES),
  note: NoteField.nullable(),
  retiredOn: IsoDayField.nullable(),
});
export type MatingBox = z.infer<typeof MatingBox>;

export const PLACEMENT_ENDS = ['caught', 'failed', 'united', 'shaken-out', 'cell-taken-back', 'other'] as const;
export type PlacementEnd = (typeof PLACEMENT_ENDS)[number];

/** One cell of a batch put into one box. A box holds one open placement at a time. */
export const Placement = z.object({
  id: IdField,
  boxId: IdField,
  batchId: IdField,
  barId: IdField.nullable(),
  placedOn: IsoDayField,
  endedOn: IsoDayField.nullable(),
  endReason: z.enum(PLACEMENT_ENDS).nullable(),
});
export type Placement = z.infer<typeof Placement>;
