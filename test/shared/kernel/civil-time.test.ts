import { differenceInMinutes, parseISO } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addHours,
  type CivilHours,
  civilTimeOfHours,
  dayOfHours,
  hoursOfCivilTime,
  startOfDay,
} from '../../../shared/kernel/civil-time.ts';
import { type Day, dayOfIso } from '../../../shared/kernel/day.ts';

const anyMinute = fc.integer({ min: -40_000_000, max: 100_000_000 });

describe('a time on the clock of the yard', () => {
  test('goes to text and back, to the minute', () => {
    fc.assert(
      fc.property(anyMinute, (minutes) => {
        const text = civilTimeOfHours((minutes / 60) as CivilHours);
        expect(Math.round(hoursOfCivilTime(text) * 60)).toBe(minutes);
      }),
    );
  });

  test('is apart by what date-fns counts in a zone without summer time', () => {
    fc.assert(
      fc.property(anyMinute, fc.integer({ min: 0, max: 40_000 }), (minutes, later) => {
        const [from, to] = [minutes, minutes + later].map((at) => civilTimeOfHours((at / 60) as CivilHours));
        expect(differenceInMinutes(parseISO(`${to}:00Z`), parseISO(`${from}:00Z`))).toBe(later);
      }),
    );
  });

  test('belongs to the day it lies in, before 1970 too', () => {
    expect(dayOfHours(hoursOfCivilTime('2026-05-14T23:59'))).toBe(dayOfIso('2026-05-14'));
    expect(dayOfHours(hoursOfCivilTime('2026-05-15T00:00'))).toBe(dayOfIso('2026-05-15'));
    expect(dayOfHours(hoursOfCivilTime('1969-12-31T23:00'))).toBe(-1 as Day);
    expect(civilTimeOfHours(startOfDay(dayOfIso('2026-05-14')))).toBe('2026-05-14T00:00');
  });

  test('a night of summer time change is 24 hours long, as bees reckon', () => {
    expect(civilTimeOfHours(addHours(hoursOfCivilTime('2026-03-28T12:00'), 24))).toBe('2026-03-29T12:00');
  });

  test('rounds up into the next day', () => {
    expect(civilTimeOfHours(addHours(startOfDay(dayOfIso('2026-05-14')), 24 - 0.001))).toBe('2026-05-15T00:00');
  });

  test.each(['2026-05-14', '2026-05-14T9:00', '2026-02-30T12:00', '2026-05-14T24:30', '2026-05-14T12:60', ''])(
    '"%s" is no time',
    (text) => {
      expect(() => hoursOfCivilTime(text)).toThrow('not a civil time');
    },
  );
});
