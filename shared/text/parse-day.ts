import { addDays, type Day, dateOfDay, dayOfDate, type IsoDay, isIsoDay, isoOfDay } from '../kernel/day.ts';
import type { Language } from '../kernel/language.ts';
import { type DateOrder, SHORT_MONTHS, shortDay } from './day-text.ts';

/**
 * Reads a day as people type it: "today", "y" or "yesterday", "tomorrow", "+3", "-2", "14", "14/5", "14 May", "May 14",
 * "14.5.26", "2026-05-14", and the same in German whatever the language ("heute", "14. Mai"); which number is the month follows the order chosen. A day without a year is the one nearest to today. null when it is no day.
 */
export function parseDay(text: string, today: Day, order: DateOrder = 'day-first'): IsoDay | null {
  const typed = text.trim().toLowerCase();
  if (isIsoDay(typed)) return typed;
  return parseWord(typed, today) ?? parseNumbers(typed, today, order) ?? parseMonthName(typed, today);
}

/**
 * A day as it stands in a field: short, and with its year where the short form would be read as a day of another year.
 * Whatever stands in the field is read back as the very day it was written for.
 */
export function typedDay(day: IsoDay, today: Day, order: DateOrder = 'day-first', language: Language = 'en'): string {
  const short = shortDay(day, order, language);
  return parseDay(withoutWeekday(short), today, order) === day ? short : `${short} ${day.slice(0, 4)}`;
}

/** "Thu 14 May" or "Do 14. Mai" was written by us; the weekday is no news. */
export const withoutWeekday = (text: string): string => text.replace(WEEKDAY, '');

const WEEKDAY =
  /^\s*(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*|(?:mo|di|mi|do|fr|sa|so)(?:\p{L}*tag|nnabend|ttwoch)?)\.?,?\s+/iu;

function parseWord(typed: string, today: Day): IsoDay | null {
  if (['today', 't', 'now', 'heute', 'h'].includes(typed)) return isoOfDay(today);
  if (['yesterday', 'y', 'gestern', 'g'].includes(typed)) return isoOfDay(addDays(today, -1));
  if (['tomorrow', 'tm', 'morgen', 'm'].includes(typed)) return isoOfDay(addDays(today, 1));
  const shift = /^([+-])\s*(\d{1,3})$/.exec(typed);
  return shift ? isoOfDay(addDays(today, Number(shift[2]) * (shift[1] === '-' ? -1 : 1))) : null;
}

/** Numbers alone: day, month, year; or month, day, year; or year, month, day. A year of four digits may lead in any order. */
function parseNumbers(typed: string, today: Day, order: DateOrder): IsoDay | null {
  const yearFirst = /^(\d{4}|\d{2})\s*[./ -]\s*(\d{1,2})\s*[./ -]\s*(\d{1,2})$/.exec(typed);
  if (yearFirst && (order === 'year-first' || yearFirst[1]?.length === 4))
    return nearest(Number(yearFirst[3]), Number(yearFirst[2]), yearOf(yearFirst[1]), today);
  const parts = /^(\d{1,2})(?:\s*[./ -]\s*(\d{1,2}))?(?:\s*[./ -]\s*(\d{2}|\d{4}))?\.?$/.exec(typed);
  if (!parts) return null;
  const [first, second] = [Number(parts[1]), parts[2] === undefined ? null : Number(parts[2])];
  if (second === null) return nearest(first, null, null, today);
  const [dayOfMonth, month] = order === 'day-first' ? [first, second] : [second, first];
  return nearest(dayOfMonth, month, yearOf(parts[3]), today);
}

function parseMonthName(typed: string, today: Day): IsoDay | null {
  const parts =
    /^(?<day>\d{1,2})\.?\s*(?<month>\p{L}{3,9})\.?(?:\s+(?<year>\d{2}|\d{4}))?$/u.exec(typed) ??
    /^(?<month>\p{L}{3,9})\.?\s+(?<day>\d{1,2})(?:,?\s+(?<year>\d{2}|\d{4}))?$/u.exec(typed);
  const month = monthOf((parts?.groups?.month ?? '').slice(0, 3));
  if (!parts || month === 0) return null;
  return nearest(Number(parts.groups?.day), month, yearOf(parts.groups?.year), today);
}

const monthOf = (letters: string): number => Math.max(...SHORT_MONTHS.map((months) => months.indexOf(letters))) + 1;

function yearOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  return text.length === 2 ? 2000 + Number(text) : Number(text);
}

/** Of the months (or years) around today, the one that puts the day nearest to it. */
function nearest(dayOfMonth: number, month: number | null, year: number | null, today: Day): IsoDay | null {
  if (month !== null && (month < 1 || month > 12)) return null;
  const now = dateOfDay(today);
  const months = month === null ? [-1, 0, 1].map((shift) => now.month + shift) : [month];
  const years = year === null ? [now.year - 1, now.year, now.year + 1] : [year];
  const candidates = years.flatMap((y) => months.flatMap((m) => realDay(y, m, dayOfMonth) ?? []));
  return candidates.toSorted((a, b) => Math.abs(a - today) - Math.abs(b - today)).map(isoOfDay)[0] ?? null;
}

function realDay(year: number, month: number, dayOfMonth: number): Day | null {
  const shifted = {
    year: month < 1 ? year - 1 : month > 12 ? year + 1 : year,
    month: ((month + 11) % 12) + 1,
    dayOfMonth,
  };
  const day = dayOfDate(shifted);
  const back = dateOfDay(day);
  return back.month === shifted.month && back.dayOfMonth === dayOfMonth ? day : null;
}
