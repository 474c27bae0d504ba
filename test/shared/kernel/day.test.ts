import { addDays as addDaysToDate, differenceInCalendarDays, getISODay, isValid, parseISO } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  type Day,
  dateOfDay,
  dayOfDate,
  dayOfIso,
  isIsoDay,
  isoOfDay,
  startOfWeek,
  weekdayOfDay,
} from '../../../shared/kernel/day.ts';

const anyDay = fc.integer({ min: -25_567, max: 120_000 }).map((number) => number as Day);

describe('civil days', () => {
  test('agree with date-fns on every day from 1970 to 2099', () => {
    let date = new Date(1970, 0, 1, 12);
    for (let number = 0; number < 47_482; number += 1) {
      const { year, month, dayOfMonth } = dateOfDay(number as Day);
      const same = year === date.getFullYear() && month === date.getMonth() + 1 && dayOfMonth === date.getDate();
      if (!same || weekdayOfDay(number as Day) !== getISODay(date))
        expect.fail(`day ${number} is ${isoOfDay(number as Day)}`);
      date = addDaysToDate(date, 1);
    }
  });

  test('go to text and back', () => {
    fc.assert(fc.property(anyDay, (day) => dayOfIso(isoOfDay(day)) === day && dayOfDate(dateOfDay(day)) === day));
  });

  test('are apart by what date-fns counts', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -4000, max: 4000 }), (day, days) => {
        const [from, to] = [parseISO(isoOfDay(day)), parseISO(isoOfDay(addDays(day, days)))];
        return differenceInCalendarDays(to, from) === days;
      }),
    );
  });

  test.each(['2026-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '26-04-01', '2026-4-1', '', 'today'])(
    '%s is no calendar day',
    (text) => {
      expect(isIsoDay(text)).toBe(false);
      if (/^\d{4}-\d{2}-\d{2}$/.test(text)) expect(isValid(parseISO(text))).toBe(false);
      expect(() => dayOfIso(text)).toThrow('not a calendar day');
    },
  );
});

test('a week begins on the day chosen, at most six days back', () => {
  // Calendar of May 2026: the 14th is a Thursday, so the week began on Mon 11, Sun 10 or Sat 9 (ISO 8601 weekdays).
  const thursday = dayOfIso('2026-05-14');
  expect(isoOfDay(startOfWeek(thursday, 'monday'))).toBe('2026-05-11');
  expect(isoOfDay(startOfWeek(thursday, 'sunday'))).toBe('2026-05-10');
  expect(isoOfDay(startOfWeek(thursday, 'saturday'))).toBe('2026-05-09');
  for (const [weekStart, day] of [
    ['monday', '2026-05-11'],
    ['sunday', '2026-05-10'],
    ['saturday', '2026-05-09'],
  ] as const)
    expect(isoOfDay(startOfWeek(dayOfIso(day), weekStart))).toBe(day);
});
