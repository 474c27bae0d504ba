import { type IsoDay, isIsoDay } from '../../../shared/kernel/day.ts';
import { FEEDS, type Feed, type Feeding } from '../../../shared/model/feeding.ts';

/** What the whole sheet is about. */
export interface SheetFeed {
  readonly places: 'hives' | 'boxes';
  readonly feed: Feed;
  readonly ownFeed: string | null;
}

/** One row as typed. */
export interface TypedFeeding {
  readonly amount: string;
  readonly note: string;
}

/** Names a sheet among all that may hold half-typed rows; the other way round below. */
export const feedingSheet = ({ day, places, feed, ownFeed }: SheetFeed & { readonly day: IsoDay }): string =>
  ['feeding', day, places, feed, encodeURIComponent(ownFeed ?? '')].join(':');

export function readFeedingSheet(sheet: string): (SheetFeed & { readonly day: IsoDay }) | null {
  const [, day = '', places, feed, ownFeed = ''] = sheet.split(':');
  const known = FEEDS.find((one) => one === feed);
  if (!isIsoDay(day) || !known || (places !== 'hives' && places !== 'boxes')) return null;
  return { day, places, feed: known, ownFeed: known === 'other' ? decodeURIComponent(ownFeed) : null };
}

export const EMPTY_FEEDING: TypedFeeding = { amount: '', note: '' };
/** Fed, and not known how much. */
const UNKNOWN = '?';

export const typedFeeding = (feeding: Feeding | null, amountText: (feeding: Feeding) => string): TypedFeeding =>
  feeding === null ? EMPTY_FEEDING : { amount: amountText(feeding) || UNKNOWN, note: feeding.note ?? '' };

/** Nothing typed is no feeding. */
export const isNoFeeding = ({ amount, note }: TypedFeeding): boolean => `${amount}${note}`.trim() === '';

export const sameFeeding = (a: TypedFeeding, b: TypedFeeding): boolean =>
  a.amount.trim() === b.amount.trim() && a.note.trim() === b.note.trim();
