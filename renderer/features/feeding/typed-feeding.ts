import type { Feeding } from '../../../shared/model/feeding.ts';

/** One row as typed. */
export interface TypedFeeding {
  readonly amount: string;
  readonly note: string;
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
