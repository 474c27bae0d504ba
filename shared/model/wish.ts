import { z } from 'zod';
import { IdField, IsoDayField, NameField, NoteField } from './fields.ts';

/** Laying queens somebody wants by a day: a promise to others, or what the person's own hives need. */
export const Wish = z.object({
  id: IdField,
  /** Who wants them, in the person's words; null = for own hives. */
  forWhom: NameField.nullable(),
  queens: z.int().min(1).max(500),
  wantedOn: IsoDayField,
  /** The day from which the person counts it as fulfilled or dropped; null = still open. */
  settledOn: IsoDayField.nullable(),
  note: NoteField.nullable(),
});
export type Wish = z.infer<typeof Wish>;
