import { getISOWeek } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Day, dateOfDay, dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { wordsOf } from '../../../shared/text/catalogue.ts';
import {
  datedDay,
  dayNumber,
  fullDay,
  monthName,
  paperDay,
  SHORT_MONTHS,
  shortDay,
  weekdayLetters,
  weekNumber,
} from '../../../shared/text/day-text.ts';
import { english } from '../../../shared/text/english/english.ts';

const THURSDAY = '2026-05-14';

describe('days in words', () => {
  test.each([
    ['day-first', 'Thu 14 May', 'Thursday 14 May 2026'],
    ['month-first', 'Thu May 14', 'Thursday, May 14, 2026'],
    ['year-first', 'Thu 2026-05-14', 'Thursday 2026-05-14'],
  ] as const)('%s', (order, short, full) => {
    expect(shortDay(THURSDAY, order)).toBe(short);
    expect(fullDay(THURSDAY, order)).toBe(full);
  });

  test('the day comes first where nothing was set, and a Day number reads like its ISO text', () => {
    expect(shortDay(THURSDAY)).toBe('Thu 14 May');
    expect(fullDay(dayOfIso(THURSDAY))).toBe('Thursday 14 May 2026');
    expect(weekdayLetters(THURSDAY)).toBe('Th');
    expect(dayNumber('2026-05-04')).toBe('4');
    expect(monthName(5)).toBe('May');
    expect(SHORT_MONTHS[0]).toEqual([
      'jan',
      'feb',
      'mar',
      'apr',
      'may',
      'jun',
      'jul',
      'aug',
      'sep',
      'oct',
      'nov',
      'dec',
    ]);
  });

  test('on paper the month is in letters in every order', () => {
    expect(paperDay(THURSDAY)).toBe('Thu 14 May');
    expect(paperDay(THURSDAY, 'month-first')).toBe('Thu May 14');
    expect(paperDay(THURSDAY, 'year-first')).toBe('Thu May 14');
  });

  test('the ISO order is that of the Swedish locale of Unicode CLDR, which writes days by ISO 8601', () => {
    const swedish = new Intl.DateTimeFormat('sv-SE');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 47_481 }), (number) => {
        const { year, month, dayOfMonth } = dateOfDay(number as Day);
        const written = swedish.format(new Date(year, month - 1, dayOfMonth, 12));
        expect(shortDay(number as Day, 'year-first').slice(4)).toBe(written);
        expect(fullDay(number as Day, 'year-first').endsWith(` ${written}`)).toBe(true);
      }),
    );
  });

  test('the month is in letters where it is not ISO, so that no day can be read two ways', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 47_481 }), fc.constantFrom('day-first', 'month-first'), (number, order) => {
        const day = number as Day;
        const { year, dayOfMonth } = dateOfDay(day);
        expect(shortDay(day, order).match(/\d+/g)).toEqual([String(dayOfMonth)]);
        expect(fullDay(day, order).match(/\d+/g)).toEqual([String(dayOfMonth), String(year)]);
      }),
    );
  });

  test('weeks are those of ISO 8601', () => {
    // ISO 8601: week 1 holds the first Thursday, so 1 January 2027 (a Friday) still lies in week 53 of 2026.
    expect(weekNumber('2027-01-01')).toBe(53);
    expect(weekNumber('2026-12-28')).toBe(53);
    expect(weekNumber('2027-01-04')).toBe(1);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 47_481 }), (number) => {
        const [year = 0, month = 0, date = 0] = isoOfDay(number as Day)
          .split('-')
          .map(Number);
        expect(weekNumber(number as Day)).toBe(getISOWeek(new Date(year, month - 1, date, 12)));
      }),
    );
  });

  test.each([
    [0, 'today', 'heute'],
    [1, 'tomorrow', 'morgen'],
    [-1, 'yesterday', 'gestern'],
    [3, 'in 3 days', 'in 3 Tagen'],
    [-5, '5 days ago', 'vor 5 Tagen'],
  ])('%d days from today is "%s", "%s"', (days, inEnglish, inGerman) => {
    expect([english.day.fromToday(days), wordsOf('de').day.fromToday(days)]).toEqual([inEnglish, inGerman]);
  });

  // DIN 5008 and the Duden: a point after the day of the month, two letters for a weekday, months not cut by us.
  test('are written as Germans write them', () => {
    expect(shortDay(THURSDAY, 'day-first', 'de')).toBe('Do 14. Mai');
    expect(fullDay(THURSDAY, 'day-first', 'de')).toBe('Donnerstag, 14. Mai 2026');
    expect(shortDay(THURSDAY, 'year-first', 'de')).toBe('Do 2026-05-14');
    expect(paperDay(THURSDAY, 'year-first', 'de')).toBe('Do 14. Mai');
    expect(weekdayLetters(THURSDAY, 'de')).toBe('Do');
    // A month cut short loses its point, as on wall calendars: a sentence that ends with the day would have two.
    expect(shortDay('2026-04-27', 'day-first', 'de')).toBe('Mo 27. Apr');
    expect(shortDay('2026-04-27', 'month-first', 'de')).toBe('Mo Apr 27');
    expect(datedDay('2025-12-01', '2026-05-21', 'day-first', 'de')).toBe('Mo 1. Dez 2025');
    expect([1, 3, 5, 12].map((month) => monthName(month, 'de'))).toEqual(['Januar', 'März', 'Mai', 'Dezember']);
  });
});

test('a day of another year says so, once', () => {
  expect(datedDay('2026-05-14', '2026-05-21')).toBe('Thu 14 May');
  expect(datedDay('2024-06-09', '2026-05-21')).toBe('Sun 9 Jun 2024');
  expect(datedDay('2024-06-09', '2026-05-21', 'year-first')).toBe('Sun 2024-06-09');
});
