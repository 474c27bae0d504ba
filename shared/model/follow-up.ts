import { z } from 'zod';
import { IdField, IsoDayField, NoteField } from './fields.ts';
import { FOLLOW_UP_ANSWERS } from './follow-up-answer.ts';

/** Jobs that follow from something done to one queen or box, apart from any batch's timetable. */
export const FOLLOW_UPS = ['check-release', 'check-eggs', 'check-queen', 'look-again'] as const;
export type FollowUpKind = (typeof FOLLOW_UPS)[number];

export const FollowUp = z.object({
  id: IdField,
  what: z.enum(FOLLOW_UPS),
  dueOn: IsoDayField,
  latestOn: IsoDayField,
  queenId: IdField.nullable(),
  boxId: IdField.nullable(),
  colonyId: IdField.nullable(),
  doneOn: IsoDayField.nullable(),
  answer: z.enum(FOLLOW_UP_ANSWERS).nullable(),
  note: NoteField.nullable(),
});
export type FollowUp = z.infer<typeof FollowUp>;
