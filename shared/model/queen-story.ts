import { z } from 'zod';
import { IdField, IsoDayField, NameField, NoteField } from './fields.ts';
import { QUEEN_PLACES } from './queen.ts';

/** How a queen is brought to a hive. */
export const INTRODUCTION_WAYS = ['candy-cage', 'push-in-cage', 'small-colony', 'direct', 'other'] as const;
export type IntroductionWay = (typeof INTRODUCTION_WAYS)[number];

/** Where a queen went on one day. Her place is that of her last move. */
export const QueenMove = z.object({
  id: IdField,
  queenId: IdField,
  movedOn: IsoDayField,
  place: z.enum(QUEEN_PLACES),
  /** The hive she was brought to. */
  colonyId: IdField.nullable(),
  /** To whom she went, in the person's words. */
  goneTo: NameField.nullable(),
  way: z.enum(INTRODUCTION_WAYS).nullable(),
  /** In the person's words and money. */
  price: z.string().trim().max(30).nullable(),
  note: NoteField.nullable(),
});
export type QueenMove = z.infer<typeof QueenMove>;

export const FEEDBACK_OUTCOMES = [
  'lays-well',
  'poor',
  'not-accepted',
  'superseded',
  'swarmed',
  'lost',
  'other',
] as const;
export type FeedbackOutcome = (typeof FEEDBACK_OUTCOMES)[number];

/** What the person who received a queen told of her. */
export const QueenFeedback = z.object({
  id: IdField,
  queenId: IdField,
  toldOn: IsoDayField,
  toldBy: NameField.nullable(),
  outcome: z.enum(FEEDBACK_OUTCOMES),
  note: NoteField.nullable(),
});
export type QueenFeedback = z.infer<typeof QueenFeedback>;
