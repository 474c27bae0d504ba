import { z } from 'zod';
import { IdField, NameField, NoteField } from './fields.ts';

/** A place where hives or mating boxes stand. */
export const Yard = z.object({
  id: IdField,
  name: NameField,
  note: NoteField.nullable(),
});
export type Yard = z.infer<typeof Yard>;
