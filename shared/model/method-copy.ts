import { z } from 'zod';
import { IdField, NameField, NoteField } from './fields.ts';
import { METHODS } from './method.ts';
import { STEPS } from './step.ts';

/** One changed step in the person's own copy of a method. Days count from the day the larvae are given. */
export const MethodChange = z.object({
  step: z.enum(STEPS),
  earliestDay: z.number().min(-30).max(60),
  expectedDay: z.number().min(-30).max(60),
  latestDay: z.number().min(-30).max(60),
  title: NameField.nullable(),
  note: NoteField.nullable(),
});
export type MethodChange = z.infer<typeof MethodChange>;

/** The person's own copy of a built-in method; it remembers its origin and holds only what differs. */
export const MethodCopy = z.object({
  id: IdField,
  origin: z.enum(METHODS),
  name: NameField,
  changes: z.array(MethodChange),
});
export type MethodCopy = z.infer<typeof MethodCopy>;
