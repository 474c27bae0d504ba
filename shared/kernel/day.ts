/**
 * A civil day, counted from 1970-01-01 = 0. A whole number; no time zone and no clock are in it, so that adding days
 * can meet neither summer time nor the length of a month. Written to the workbook and to the page as an IsoDay.
 */
export type Day = number & { readonly day: unique symbol };

/** A civil day as text, `YYYY-MM-DD` (ISO 8601 calendar date). */
export type IsoDay = string;

const DAYS_PER_ERA = 146_097; // 400 Gregorian years
const DAYS_0000_03_01_TO_1970 = 719_468;
const ISO_DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

export interface CalendarDate {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly dayOfMonth: number;
}

/**
 * Day number of a calendar date in the proleptic Gregorian calendar, years 0 to 9999.
 * Counts in years that begin on 1 March, so that the leap day comes last. Checked against Date in the tests.
 */
export function dayOfDate({ year, month, dayOfMonth }: CalendarDate): Day {
  const shiftedYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(shiftedYear / 400);
  const yearOfEra = shiftedYear - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + dayOfMonth - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return (era * DAYS_PER_ERA + dayOfEra - DAYS_0000_03_01_TO_1970) as Day;
}

/** The calendar date of a day number; the inverse of `dayOfDate`. */
export function dateOfDay(day: Day): CalendarDate {
  const shifted = day + DAYS_0000_03_01_TO_1970;
  const era = Math.floor(shifted / DAYS_PER_ERA);
  const dayOfEra = shifted - era * DAYS_PER_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1,
  };
}

/** True for a text that is a real calendar day, so false for 2026-02-30. */
export function isIsoDay(text: string): text is IsoDay {
  const parts = ISO_DAY.exec(text);
  return parts !== null && isoOfDay(dayOfParts(parts)) === text;
}

/** The day number of an ISO text that is known to be valid; throws on anything else, since that is our own mistake. */
export function dayOfIso(text: IsoDay): Day {
  const parts = ISO_DAY.exec(text);
  if (parts === null || !isIsoDay(text)) throw new Error(`not a calendar day: ${text}`);
  return dayOfParts(parts);
}

export function isoOfDay(day: Day): IsoDay {
  const { year, month, dayOfMonth } = dateOfDay(day);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
}

export const addDays = (day: Day, days: number): Day => (day + days) as Day;

/** Whole days from one day to another; negative when `to` lies before `from`. */
export const daysBetween = (from: Day, to: Day): number => to - from;

export const earlierOf = (a: Day, b: Day): Day => (a < b ? a : b);
export const laterOf = (a: Day, b: Day): Day => (a > b ? a : b);

/** ISO 8601 weekday: Monday = 1 to Sunday = 7. 1970-01-01 was a Thursday. */
export const weekdayOfDay = (day: Day): number => ((((day + 3) % 7) + 7) % 7) + 1;

/** The weekday a week begins on where the person lives. */
export type WeekStart = 'monday' | 'saturday' | 'sunday';
const FIRST_WEEKDAY: Readonly<Record<WeekStart, number>> = { monday: 1, saturday: 6, sunday: 7 };

/** The first day of the week that `day` lies in. */
export const startOfWeek = (day: Day, weekStart: WeekStart): Day =>
  addDays(day, -((weekdayOfDay(day) - FIRST_WEEKDAY[weekStart] + 7) % 7));

export const yearOfDay = (day: Day): number => dateOfDay(day).year;

function dayOfParts(parts: RegExpExecArray): Day {
  return dayOfDate({ year: Number(parts[1]), month: Number(parts[2]), dayOfMonth: Number(parts[3]) });
}
