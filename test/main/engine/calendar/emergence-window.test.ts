import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emergenceWindow } from '../../../../main/engine/calendar/emergence-window.ts';
import { day, timetableOf } from '../../../builders/calendar.ts';

test('is the window of the whole timetable', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 48 }),
      fc.integer({ min: 0, max: 48 }),
      fc.double({ min: 31, max: 37, noNaN: true }),
      (from, length, celsius) => {
        const larvaAgeHours = [from, from + length] as const;
        const { emergence, placeDeadline } = timetableOf({ larvaAgeHours, sealedStageCelsius: celsius });
        expect(emergenceWindow(day('2026-05-10'), larvaAgeHours, celsius)).toEqual({ ...emergence, placeDeadline });
      },
    ),
  );
});
