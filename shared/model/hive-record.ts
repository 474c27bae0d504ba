import { z } from 'zod';
import { IdField, IsoDayField, NoteField } from './fields.ts';

const Words = (most: number) => z.string().trim().max(most).nullable();

/** A treatment as the person wrote it down. The label and local law say what is allowed; this is only the record. */
export const Treatment = z.object({
  id: IdField,
  colonyId: IdField,
  fromOn: IsoDayField,
  toOn: IsoDayField.nullable(),
  product: z.string().trim().min(1).max(80),
  amount: Words(60),
  reason: Words(80),
  /** Number of a prescription, batch of the product, or other paper. */
  paper: Words(60),
  note: NoteField.nullable(),
});
export type Treatment = z.infer<typeof Treatment>;

/** A hive moved to another place or yard. */
export const ColonyMove = z.object({
  id: IdField,
  colonyId: IdField,
  movedOn: IsoDayField,
  fromYardId: IdField.nullable(),
  toYardId: IdField.nullable(),
  place: Words(60),
  /** Permit, certificate or inspection, in the person's words. */
  paper: Words(60),
  note: NoteField.nullable(),
});
export type ColonyMove = z.infer<typeof ColonyMove>;
