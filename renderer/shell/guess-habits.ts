import type { Habits } from '../../shared/contract/workbook.ts';

/** Where degrees are Fahrenheit, and where feed goes by quarts and pounds (CLDR unit preferences, from memory). */
const FAHRENHEIT_REGIONS = ['US', 'PR', 'BS', 'BZ', 'KY', 'PW', 'FM', 'MH', 'LR'];
const US_MEASURES_REGIONS = ['US', 'PR', 'LR'];

const WEEK_STARTS = { 1: 'monday', 6: 'saturday', 7: 'sunday' } as const;

/** Newer than the types of the language: browsers have it as a method or as a value, or not yet. */
interface WithWeek {
  readonly getWeekInfo?: () => { readonly firstDay: number };
  readonly weekInfo?: { readonly firstDay: number };
}

/** How days, degrees and amounts are written where the computer says it is; what it does not say is the usual choice. */
export function guessHabits(locale: string): Habits {
  const place = new Intl.Locale(locale).maximize();
  const region = place.region ?? '';
  return {
    dateOrder: dateOrderOf(locale),
    weekStart: weekStartOf(place as WithWeek),
    temperature: FAHRENHEIT_REGIONS.includes(region) ? 'fahrenheit' : 'celsius',
    measures: US_MEASURES_REGIONS.includes(region) ? 'us' : 'metric',
  };
}

function dateOrderOf(locale: string): Habits['dateOrder'] {
  const parts = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'numeric', year: 'numeric' }).formatToParts();
  const first = parts.find(({ type }) => ['day', 'month', 'year', 'relatedYear'].includes(type))?.type;
  if (first === 'month') return 'month-first';
  return first === 'day' ? 'day-first' : 'year-first';
}

function weekStartOf(place: WithWeek): Habits['weekStart'] {
  const firstDay = (place.getWeekInfo?.() ?? place.weekInfo)?.firstDay;
  return WEEK_STARTS[firstDay as keyof typeof WEEK_STARTS] ?? 'monday';
}
