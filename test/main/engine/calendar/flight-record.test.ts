import { describe, expect, it } from 'vitest';
import { compareTimetables } from '../../../../main/engine/calendar/compare-timetables.ts';
import { flightRecord, lateDays } from '../../../../main/engine/calendar/flight-record.ts';
import { addDays, isoOfDay } from '../../../../shared/kernel/day.ts';
import { day, stepOf, timetableOf } from '../../../builders/calendar.ts';

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

describe('lateDays', () => {
  // Büchler et al. 2013, section 2.2.2, for the 3 weeks; the putting off is common practice, no source: day 21, put off by unflyable days of days 5 to 21, never past day 30.
  it('comes 21 days after emergence', () => {
    expect(lateDays(EMERGED, [])).toEqual({
      warningOn: day('2026-06-12'),
      giveUpOn: day('2026-06-19'),
      unflyableDays: 0,
    });
  });

  it('is put off by each unflyable day between day 5 and day 21', () => {
    const log = [weather(4, 10), weather(5, 10), weather(12, 10), weather(21, 10), weather(22, 10)];
    expect(lateDays(EMERGED, log)).toEqual({
      warningOn: day('2026-06-15'),
      giveUpOn: day('2026-06-22'),
      unflyableDays: 3,
    });
  });

  it('is never put off past 30 days, nor giving up past 35', () => {
    const log = Array.from({ length: 40 }, (_, dayAfter) => weather(dayAfter, 10));
    expect(lateDays(EMERGED, log)).toEqual({
      warningOn: day('2026-06-21'),
      giveUpOn: day('2026-06-26'),
      unflyableDays: 17,
    });
  });

  it('is not put off by days that were not noted, nor by possible ones', () => {
    expect(lateDays(EMERGED, [weather(8, 19), weather(9, 22)]).warningOn).toBe(day('2026-06-12'));
  });
});

describe('a timetable with weather', () => {
  const log = [weather(6, 10), weather(7, 12)];

  it('puts the late warning and giving up off, and nothing else', () => {
    const plain = timetableOf();
    const slip = compareTimetables(plain, timetableOf({ weather: log }));
    expect(slip.lines.filter((line) => line.changed).map((line) => [line.step, line.movesBy])).toEqual([
      ['late-warning', 2],
      ['give-up', 2],
    ]);
    expect(slip.lines.map((line) => line.becomes?.expected)).toEqual(
      slip.lines.map((line) => line.becomes?.expected).toSorted((a, b) => (a ?? 0) - (b ?? 0)),
    );
  });

  it('leaves a warning that was marked done', () => {
    const done = [{ step: 'late-warning', on: day('2026-06-12') }] as const;
    expect(stepOf(timetableOf({ weather: log, done }), 'late-warning').expected).toBe(day('2026-06-12'));
  });
});
