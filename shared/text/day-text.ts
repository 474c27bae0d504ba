import { addDays as addDaysToDate, format, getISOWeek } from 'date-fns';
import { enGB } from 'date-fns/locale/en-GB';
import { type Day, dateOfDay, dayOfIso, type IsoDay } from '../kernel/day.ts';

/**
 * How the person wants days written. Months are letters, so that 5/6 can never be read two ways; only the ISO 8601 order
 * is all numbers, and begins with the year.
 */
export type DateOrder = 'day-first' | 'month-first' | 'year-first';

const SHORT: Readonly<Record<DateOrder, string>> = {
  'day-first': 'EEE d MMM',
  'month-first': 'EEE MMM d',
  'year-first': 'EEE yyyy-MM-dd',
};
const FULL: Readonly<Record<DateOrder, string>> = {
  'day-first': 'EEEE d MMMM yyyy',
  'month-first': 'EEEE, MMMM d, yyyy',
  'year-first': 'EEEE yyyy-MM-dd',
};

/** date-fns formats Date objects; noon of the civil day is the same day in every time zone's own calendar. */
function noonOf(day: Day): Date {
  const { year, month, dayOfMonth } = dateOfDay(day);
  return new Date(year, month - 1, dayOfMonth, 12);
}

const asDay = (day: Day | IsoDay): Day => (typeof day === 'string' ? dayOfIso(day) : day);

/** "Thu 14 May" */
export const shortDay = (day: Day | IsoDay, order: DateOrder = 'day-first'): string =>
  format(noonOf(asDay(day)), SHORT[order], { locale: enGB });

/** "Thu 14 May", or "Sun 9 Jun 2024" where it lies in another year than today. */
export function datedDay(day: IsoDay, today: IsoDay, order: DateOrder = 'day-first'): string {
  const short = shortDay(day, order);
  const year = day.slice(0, 4);
  return order === 'year-first' || year === today.slice(0, 4) ? short : `${short} ${year}`;
}

/** "Thursday 14 May 2026" */
export const fullDay = (day: Day | IsoDay, order: DateOrder = 'day-first'): string =>
  format(noonOf(asDay(day)), FULL[order], { locale: enGB });

/** A day on paper, where narrow columns and the yard ask for letters in every order: "Thu 14 May", "Thu May 14". */
export const paperDay = (day: Day | IsoDay, order: DateOrder = 'day-first'): string =>
  shortDay(day, order === 'year-first' ? 'month-first' : order);

/** "Th", for the narrow columns of the batch picture. */
export const weekdayLetters = (day: Day | IsoDay): string => format(noonOf(asDay(day)), 'EEEEEE', { locale: enGB });

/** "14" */
export const dayNumber = (day: Day | IsoDay): string => format(noonOf(asDay(day)), 'd', { locale: enGB });

export const monthName = (month: number): string => format(new Date(2026, month - 1, 1, 12), 'LLLL', { locale: enGB });

/** ISO 8601 week number. */
export const weekNumber = (day: Day | IsoDay): number => getISOWeek(noonOf(asDay(day)));

/** "today", "yesterday", "in 3 days", "5 days ago". */
export function fromToday(day: Day | IsoDay, today: Day | IsoDay): string {
  const days = asDay(day) - asDay(today);
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days === -1) return 'yesterday';
  return days > 0 ? `in ${days} days` : `${-days} days ago`;
}

/** The names of the twelve months, short, for reading typed days. */
export const SHORT_MONTHS: readonly string[] = Array.from({ length: 12 }, (_, month) =>
  format(addDaysToDate(new Date(2026, month, 1, 12), 0), 'LLL', { locale: enGB })
    .toLowerCase()
    .slice(0, 3),
);
