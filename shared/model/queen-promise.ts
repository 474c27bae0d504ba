import { z } from 'zod';
import { IdField, IsoDayField, NameField, NoteField } from './fields.ts';

/** One queen promised to somebody. How many queens somebody wants is a wish; the two belong together by the name. */
export const QueenPromise = z.object({
  id: IdField,
  queenId: IdField,
  promisedOn: IsoDayField,
  /** To whom, in the person's words. */
  promisedTo: NameField,
  /** The day by which she is wanted; null = none was said for her, a wish of that name may say one. */
  wantedOn: IsoDayField.nullable(),
  note: NoteField.nullable(),
});
export type QueenPromise = z.infer<typeof QueenPromise>;

/** What became of a promise: she is still here, went to that name (or to nobody named), or is gone otherwise. */
export type PromiseStanding = 'open' | 'kept' | 'not-kept';
