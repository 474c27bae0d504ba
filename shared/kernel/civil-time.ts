import { type Day, dayOfIso, isIsoDay, isoOfDay } from './day.ts';

/**
 * A time on the wall clock of the yard, as hours since 1970-01-01 00:00 by that same clock. It holds no time zone:
 * bees are reckoned in elapsed hours, and an hour of summer time is far below what any of the figures can tell.
 */
export type CivilHours = number & { readonly civilHours: unique symbol };

export const HOURS_PER_DAY = 24;

const CIVIL_TIME = /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):([0-5]\d)$/;

/** Reads `YYYY-MM-DDTHH:MM`; throws on anything else. */
export function hoursOfCivilTime(text: string): CivilHours {
  const parts = CIVIL_TIME.exec(text);
  if (!parts?.[1] || !isIsoDay(parts[1])) throw new Error(`not a civil time: ${text}`);
  return (dayOfIso(parts[1]) * HOURS_PER_DAY + Number(parts[2]) + Number(parts[3]) / 60) as CivilHours;
}

/** Writes `YYYY-MM-DDTHH:MM`, rounded to the minute. */
export function civilTimeOfHours(hours: CivilHours): string {
  const minutes = Math.round(hours * 60);
  const day = Math.floor(minutes / (HOURS_PER_DAY * 60));
  const inDay = minutes - day * HOURS_PER_DAY * 60;
  const two = (n: number) => String(n).padStart(2, '0');
  return `${isoOfDay(day as Day)}T${two(Math.floor(inDay / 60))}:${two(inDay % 60)}`;
}

export const startOfDay = (day: Day): CivilHours => (day * HOURS_PER_DAY) as CivilHours;

export const dayOfHours = (hours: CivilHours): Day => Math.floor(hours / HOURS_PER_DAY) as Day;

export const addHours = (at: CivilHours, hours: number): CivilHours => (at + hours) as CivilHours;
