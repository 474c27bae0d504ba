import { describe, expect, it } from 'vitest';
import { flightRecord, lateWarning } from '../../../../main/engine/calendar/flight-record.ts';
import { addDays, isoOfDay } from '../../../../shared/kernel/day.ts';
import { day } from '../../../builders/calendar.ts';

const EMERGED = day('2026-05-22');
/** Weather `dayAfter` days after emergence. */
const weather = (dayAfter: number, maxCelsius: number) => ({
  on: addDays(EMERGED, dayAfter),
  maxCelsius,
  windKmh: 5,
  sun: true,
});

describe('flightRecord', () => {
  it('rates every day of the span and leaves unnoted days unknown', () => {
    const rated = flightRecord([weather(1, 22), weather(2, 15)], EMERGED, addDays(EMERGED, 3));
    expect(rated.map((one) => one.rating)).toEqual(['unknown', 'good', 'poor', 'unknown']);
    expect(rated.map((one) => isoOfDay(one.on))).toEqual(['2026-05-22', '2026-05-23', '2026-05-24', '2026-05-25']);
  });

  it('takes the last note when a day has two', () => {
    expect(flightRecord([weather(0, 15), weather(0, 22)], EMERGED, EMERGED)).toMatchObject([{ rating: 'good' }]);
  });
});

describe('lateWarning', () => {
  // Büchler et al. 2013, section 2.2.2, for the 3 weeks; the putting off is common practice, no source: day 21, put off by unflyable days of days 5 to 21, never past day 30.
  it('comes 21 days after emergence', () => {
    expect(lateWarning(EMERGED, [])).toEqual({ on: day('2026-06-12'), unflyableDays: 0 });
  });

  it('is put off by each unflyable day between day 5 and day 21', () => {
    const log = [weather(4, 10), weather(5, 10), weather(12, 10), weather(21, 10), weather(22, 10)];
    expect(lateWarning(EMERGED, log)).toEqual({ on: day('2026-06-15'), unflyableDays: 3 });
  });

  it('is never put off past 30 days', () => {
    const log = Array.from({ length: 40 }, (_, dayAfter) => weather(dayAfter, 10));
    expect(lateWarning(EMERGED, log)).toEqual({ on: day('2026-06-21'), unflyableDays: 17 });
  });

  it('is not put off by days that were not noted, nor by possible ones', () => {
    expect(lateWarning(EMERGED, [weather(8, 19), weather(9, 22)]).on).toBe(day('2026-06-12'));
  });
});
