import { format } from 'date-fns';
import type { Language } from '../kernel/language.ts';
import { DAY_LOCALES, type DateOrder, withoutMonthPoint } from './day-text.ts';

const DAY: Readonly<Record<Language, Readonly<Record<DateOrder, string>>>> = {
  en: { 'day-first': 'EEE d MMM yyyy', 'month-first': 'EEE MMM d, yyyy', 'year-first': 'EEE yyyy-MM-dd' },
  de: { 'day-first': 'EEEEEE d. MMM yyyy', 'month-first': 'EEEEEE MMM d, yyyy', 'year-first': 'EEEEEE yyyy-MM-dd' },
};

/** "Thu 14 May 2026, 18:05": an instant (ISO 8601 UTC) by the calendar and clock of this computer. */
export const instantText = (instant: string, order: DateOrder = 'day-first', language: Language = 'en'): string =>
  withoutMonthPoint(format(new Date(instant), `${DAY[language][order]}, HH:mm`, { locale: DAY_LOCALES[language] }));
