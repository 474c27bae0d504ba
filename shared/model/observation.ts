import { z } from 'zod';
import { IdField, IsoDayField, NoteField } from './fields.ts';
import { OBSERVATION_KINDS } from './step.ts';

/** Something really seen on a batch that narrows its forecast. A fact: the program never moves it. */
export const Observation = z.object({
  id: IdField,
  batchId: IdField,
  what: z.enum(OBSERVATION_KINDS),
  seenOn: IsoDayField,
  /** For kinds that give an age or size: hours, youngest and oldest. */
  fromHours: z.number().min(0).max(400).nullable(),
  toHours: z.number().min(0).max(400).nullable(),
  note: NoteField.nullable(),
});
export type Observation = z.infer<typeof Observation>;
