import { z } from 'zod';
import { CodeField, IdField, IsoDayField, NameField, NoteField } from './fields.ts';

export const QUEEN_PLACES = ['in-box', 'caged', 'in-hive', 'given', 'sold', 'dead', 'lost', 'unknown'] as const;
export type QueenPlace = (typeof QUEEN_PLACES)[number];

/** A queen worth a number. Her year colour is reckoned from `bornIn`, never stored. */
export const Queen = z.object({
  id: IdField,
  /** 26-041: birth year and number in it. */
  number: CodeField,
  bornIn: z.int().min(1950).max(2200),
  placementId: IdField.nullable(),
  batchId: IdField.nullable(),
  breederId: IdField.nullable(),
  /** Her mother, where the person named her; else she is reckoned from the breeder hive. */
  motherId: IdField.nullable().default(null),
  motherLine: NameField.nullable(),
  markedOn: IsoDayField.nullable(),
  firstEggsOn: IsoDayField.nullable(),
  provedOn: IsoDayField.nullable(),
  place: z.enum(QUEEN_PLACES),
  boxId: IdField.nullable(),
  colonyId: IdField.nullable(),
  /** To whom she went, in the person's words. */
  goneTo: NameField.nullable(),
  note: NoteField.nullable(),
});
export type Queen = z.infer<typeof Queen>;
