import { type CalendarDate, dayOfDate, isoOfDay } from '../../shared/kernel/day.ts';
import { useDays } from './words.ts';

/** "Thu 14 May, 21:10": an instant as it stood on this computer's clock, with the year when it is another one. */
export function useMoment(): (instant: string) => string {
  const days = useDays();
  return (instant) => {
    const date = new Date(instant);
    const civil: CalendarDate = { year: date.getFullYear(), month: date.getMonth() + 1, dayOfMonth: date.getDate() };
    const day = isoOfDay(dayOfDate(civil));
    const hour = String(date.getHours()).padStart(2, '0');
    const minute = String(date.getMinutes()).padStart(2, '0');
    const year = day.slice(0, 4) === days.today.slice(0, 4) ? '' : ` ${day.slice(0, 4)}`;
    return `${days.short(day)}${days.order === 'year-first' ? '' : year}, ${hour}:${minute}`;
  };
}
