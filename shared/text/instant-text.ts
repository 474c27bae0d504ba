import { format } from 'date-fns';
import { enGB } from 'date-fns/locale/en-GB';
import type { DateOrder } from './day-text.ts';

const DAY: Readonly<Record<DateOrder, string>> = {
  'day-first': 'EEE d MMM yyyy',
  'month-first': 'EEE MMM d, yyyy',
  'year-first': 'EEE yyyy-MM-dd',
};

/** "Thu 14 May 2026, 18:05": an instant (ISO 8601 UTC) by the calendar and clock of this computer. */
export const instantText = (instant: string, order: DateOrder = 'day-first'): string =>
  format(new Date(instant), `${DAY[order]}, HH:mm`, { locale: enGB });
