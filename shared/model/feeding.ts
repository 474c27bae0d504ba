import { z } from 'zod';
import { IdField, IsoDayField, NoteField } from './fields.ts';

/** What is fed. The two syrups are sugar to water by weight. */
export const FEEDS = ['syrup-1-1', 'syrup-2-1', 'fondant', 'pollen', 'protein-patty', 'other'] as const;
export type Feed = (typeof FEEDS)[number];

/** Litres or kilograms; a larger amount in one place is a slip of the finger. */
export const MOST_FEED_AT_ONCE = 100;
const AmountField = z.number().positive().max(MOST_FEED_AT_ONCE).nullable();

/** One hive or one mating box was fed once. */
export const Feeding = z
  .object({
    id: IdField,
    /** The hive, or null for a mating box. */
    colonyId: IdField.nullable(),
    boxId: IdField.nullable(),
    fedOn: IsoDayField,
    feed: z.enum(FEEDS),
    /** The person's words for a feed that is not in the list. */
    ownFeed: z.string().trim().min(1).max(60).nullable(),
    /** At most one of the two amounts; both null where it is not known how much was given. */
    litres: AmountField,
    kilograms: AmountField,
    note: NoteField.nullable(),
  })
  .refine(({ colonyId, boxId }) => (colonyId === null) !== (boxId === null), { path: ['colonyId'] })
  .refine(({ litres, kilograms }) => litres === null || kilograms === null, { path: ['kilograms'] })
  .refine(({ feed, ownFeed }) => (feed === 'other') === (ownFeed !== null), { path: ['ownFeed'] });
export type Feeding = z.infer<typeof Feeding>;

/** How a feed is usually measured. */
export const feedMeasure = (feed: Feed): 'litres' | 'kilograms' =>
  feed === 'syrup-1-1' || feed === 'syrup-2-1' ? 'litres' : 'kilograms';
