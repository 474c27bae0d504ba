import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day, dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { shortDay } from '../../../shared/text/day-text.ts';
import { parseDay, typedDay, withoutWeekday } from '../../../shared/text/parse-day.ts';

const TODAY = dayOfIso('2026-05-21');

test.each([
  ['today', '2026-05-21'],
  ['y', '2026-05-20'],
  ['tomorrow', '2026-05-22'],
  ['+3', '2026-05-24'],
  ['-2', '2026-05-19'],
  ['14', '2026-05-14'],
  ['14/5', '2026-05-14'],
  ['14.5.26', '2026-05-14'],
  ['14 May', '2026-05-14'],
  ['May 14, 2027', '2027-05-14'],
  ['2026-05-14', '2026-05-14'],
  ['2 jan', '2026-01-02'],
])('"%s" is %s', (text, day) => {
  expect(parseDay(text, TODAY)).toBe(day);
});

test('a day without its year is the nearest one', () => {
  expect(parseDay('28 Dec', dayOfIso('2026-01-03'))).toBe('2025-12-28');
  expect(parseDay('3 Jan', dayOfIso('2026-12-30'))).toBe('2027-01-03');
});

test('the order of numbers follows the setting', () => {
  expect(parseDay('5/6', TODAY, 'month-first')).toBe('2026-05-06');
  expect(parseDay('5/6', TODAY, 'day-first')).toBe('2026-06-05');
  // ISO 8601 puts the larger unit first: month before day, and the year before both.
  expect(parseDay('05-06', TODAY, 'year-first')).toBe('2026-05-06');
  expect(parseDay('26-05-06', TODAY, 'year-first')).toBe('2026-05-06');
  expect(parseDay('26-05-06', TODAY, 'day-first')).toBe('2006-05-26');
  expect(parseDay('2026/5/6', TODAY, 'day-first')).toBe('2026-05-06');
});

test.each(['', '32', '30 Feb', '14 Foo', '5/13', 'soon', '+', '1/2/3/4', '31/4', '31 Apr', '0', '0/5', '14 x'])(
  '"%s" is no day',
  (text) => {
    expect(parseDay(text, TODAY)).toBeNull();
  },
);

test('what we write is read back, for every day within five months', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -150, max: 150 }),
      fc.constantFrom('day-first', 'month-first', 'year-first'),
      (shift, order) => {
        const day = addDays(TODAY, shift) as Day;
        return parseDay(shortDay(day, order).replace(/^\w+ /, ''), TODAY, order) === isoOfDay(day);
      },
    ),
  );
});

test.each(['day-first', 'month-first', 'year-first'] as const)(
  'whatever stands in a field, %s, is read back as the day it was written for',
  (order) => {
    const day = fc.integer({ min: dayOfIso('1990-01-01'), max: dayOfIso('2060-12-31') }).map((value) => value as Day);
    fc.assert(
      fc.property(day, day, (written, today) => {
        const text = typedDay(isoOfDay(written), today, order);
        expect(parseDay(withoutWeekday(text), today, order)).toBe(isoOfDay(written));
      }),
    );
  },
);

test('the year stands in the field only where it is needed', () => {
  const today = dayOfIso('2026-05-21');
  expect(typedDay('2026-05-14', today)).toBe('Thu 14 May');
  expect(typedDay('2025-12-30', today)).toBe('Tue 30 Dec');
  expect(typedDay('2024-06-09', today)).toBe('Sun 9 Jun 2024');
});
