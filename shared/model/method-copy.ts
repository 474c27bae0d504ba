import { z } from 'zod';
import { IdField, NameField, NoteField } from './fields.ts';
import { METHODS } from './method.ts';
import { STEPS } from './step.ts';
import type { StepChange } from './timetable.ts';

const OwnDay = z.number().min(-30).max(60).nullable();

/**
 * One changed step in the person's own copy of a method. Days count from the day the larvae are given; null days = those
 * that are built in, where only its name or a note is the person's own.
 */
export const MethodChange = z.object({
  step: z.enum(STEPS),
  earliestDay: OwnDay,
  expectedDay: OwnDay,
  latestDay: OwnDay,
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

/** The steps whose days a copy changes, as the calendar wants them; a window that is not whole is none. */
export const dayChanges = (copy: Pick<MethodCopy, 'changes'> | null): readonly StepChange[] =>
  (copy?.changes ?? []).flatMap(({ step, earliestDay, expectedDay, latestDay }) =>
    earliestDay === null || expectedDay === null || latestDay === null
      ? []
      : [{ step, earliestDay, expectedDay, latestDay }],
  );

/** What the person calls a step and adds to it in their copy. */
export const ownWords = (
  copy: Pick<MethodCopy, 'changes'> | null,
  step: MethodChange['step'],
): Pick<MethodChange, 'title' | 'note'> =>
  copy?.changes.find((change) => change.step === step) ?? { title: null, note: null };
