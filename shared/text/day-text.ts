import { format, getISOWeek, type Locale } from 'date-fns';
import { de } from 'date-fns/locale/de';
import { enGB } from 'date-fns/locale/en-GB';
import { type Day, dateOfDay, dayOfIso, type IsoDay } from '../kernel/day.ts';
import type { Language } from '../kernel/language.ts';

/**
 * How the person wants days written. Months are letters, so that 5/6 can never be read two ways; only the ISO 8601 order
 * is all numbers, and begins with the year.
 */
export type DateOrder = 'day-first' | 'month-first' | 'year-first';

export const DAY_LOCALES: Readonly<Record<Language, Locale>> = { en: enGB, de };

type Patterns = Readonly<Record<Language, Readonly<Record<DateOrder, string>>>>;

/** German sets a point after the day of the month; its short weekdays have two letters. */
const SHORT: Patterns = {
  en: { 'day-first': 'EEE d MMM', 'month-first': 'EEE MMM d', 'year-first': 'EEE yyyy-MM-dd' },
  de: { 'day-first': 'EEEEEE d. MMM', 'month-first': 'EEEEEE MMM d', 'year-first': 'EEEEEE yyyy-MM-dd' },
};
const FULL: Patterns = {
  en: { 'day-first': 'EEEE d MMMM yyyy', 'month-first': 'EEEE, MMMM d, yyyy', 'year-first': 'EEEE yyyy-MM-dd' },
  de: { 'day-first': 'EEEE, d. MMMM yyyy', 'month-first': 'EEEE, MMMM d, yyyy', 'year-first': 'EEEE, yyyy-MM-dd' },
};

/** date-fns formats Date objects; noon of the civil day is the same day in every time zone's own calendar. */
function noonOf(day: Day): Date {
  const { year, month, dayOfMonth } = dateOfDay(day);
  return new Date(year, month - 1, dayOfMonth, 12);
}

const asDay = (day: Day | IsoDay): Day => (typeof day === 'string' ? dayOfIso(day) : day);

/** The point after a German month that was cut short is left out, as on wall calendars: days often end a sentence. */
export const withoutMonthPoint = (text: string): string => text.replace(/(?<=\p{L})\./u, '');

/** "Thu 14 May", "Do 14. Mai", "Mo 27. Apr" */
export const shortDay = (day: Day | IsoDay, order: DateOrder = 'day-first', language: Language = 'en'): string =>
  withoutMonthPoint(format(noonOf(asDay(day)), SHORT[language][order], { locale: DAY_LOCALES[language] }));

/** "Thu 14 May", or "Sun 9 Jun 2024" where it lies in another year than today. */
export function datedDay(
  day: IsoDay,
  today: IsoDay,
  order: DateOrder = 'day-first',
  language: Language = 'en',
): string {
  const short = shortDay(day, order, language);
  const year = day.slice(0, 4);
  return order === 'year-first' || year === today.slice(0, 4) ? short : `${short} ${year}`;
}

/** "Thursday 14 May 2026", "Donnerstag, 14. Mai 2026" */
export const fullDay = (day: Day | IsoDay, order: DateOrder = 'day-first', language: Language = 'en'): string =>
  format(noonOf(asDay(day)), FULL[language][order], { locale: DAY_LOCALES[language] });

/** A day on paper, where narrow columns and the yard ask for letters in every order: "Thu 14 May", "Thu May 14". */
export const paperDay = (day: Day | IsoDay, order: DateOrder = 'day-first', language: Language = 'en'): string =>
  shortDay(day, order === 'year-first' ? (language === 'de' ? 'day-first' : 'month-first') : order, language);

/** "Th", for the narrow columns of the batch picture. */
export const weekdayLetters = (day: Day | IsoDay, language: Language = 'en'): string =>
  format(noonOf(asDay(day)), 'EEEEEE', { locale: DAY_LOCALES[language] });

/** "14" */
export const dayNumber = (day: Day | IsoDay): string => String(dateOfDay(asDay(day)).dayOfMonth);

export const monthName = (month: number, language: Language = 'en'): string =>
  format(new Date(2026, month - 1, 1, 12), 'LLLL', { locale: DAY_LOCALES[language] });

/** ISO 8601 week number. */
export const weekNumber = (day: Day | IsoDay): number => getISOWeek(noonOf(asDay(day)));

/** The first three letters of the twelve months in each language, for reading typed days: "mai" is May as well. */
export const SHORT_MONTHS: readonly (readonly string[])[] = Object.values(DAY_LOCALES).map((locale) =>
  Array.from({ length: 12 }, (_, month) =>
    format(new Date(2026, month, 1, 12), 'LLLL', { locale })
      .toLowerCase()
      .slice(0, 3),
  ),
);
