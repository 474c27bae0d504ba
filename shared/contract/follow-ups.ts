import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { IdField, IsoDayField, NoteField } from '../model/fields.ts';
import type { FollowUpKind } from '../model/follow-up.ts';
import { FOLLOW_UP_ANSWERS, type FollowUpAnswer } from '../model/follow-up-answer.ts';

export const AnswerFollowUp = z.object({
  followUpId: IdField,
  doneOn: IsoDayField,
  answer: z.enum(FOLLOW_UP_ANSWERS),
  note: NoteField.nullable(),
});

export interface FollowUpLine {
  readonly id: string;
  readonly what: FollowUpKind;
  readonly dueOn: IsoDay;
  readonly latestOn: IsoDay;
  readonly late: boolean;
  readonly doneOn: IsoDay | null;
  readonly answer: FollowUpAnswer | null;
  readonly note: string | null;
  readonly queen: { readonly id: string; readonly number: string } | null;
  readonly box: { readonly id: string; readonly code: string } | null;
  readonly hive: { readonly id: string; readonly code: string } | null;
  readonly yard: string | null;
}

export type FollowUpsRefusal =
  | { readonly kind: 'follow-up-missing' }
  | { readonly kind: 'answered-before-move'; readonly field: 'doneOn'; readonly movedOn: IsoDay };
