import { describe, expect, test } from 'vitest';
import { getBatch } from '../../../../main/operations/batches/get-batch.ts';
import { listWeather } from '../../../../main/operations/weather/list-weather.ts';
import { saveWeather } from '../../../../main/operations/weather/save-weather.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, onDay } from '../../../builders/running-batch.ts';

const NOTED = { maxCelsius: 22, windKmh: 10, rain: false, flyingHours: 3 };
const COLD = { maxCelsius: 14, windKmh: null, rain: null, flyingHours: null };

describe('the weather log', () => {
  test('offers every day of the last two weeks, and all noted days of the year before them', () => {
    const desk = aDesk({ today: '2026-06-01' });
    mustOk(saveWeather(desk, { day: '2026-04-30', ...NOTED }));
    mustOk(saveWeather(desk, { day: '2025-06-01', ...NOTED }));
    const { days } = listWeather(desk);
    expect(days).toHaveLength(15);
    expect(days[0]).toMatchObject({ day: '2026-06-01', rating: 'unknown', maxCelsius: null });
    expect(days[13]?.day).toBe('2026-05-19');
    expect(days[14]).toEqual({ day: '2026-04-30', ...NOTED, rating: 'good' });
  });

  test.each([
    // Good: above 20 °C, at most 24 km/h, sun; possible from 18 °C [Büchler et al. 2013, sec. 2.2.1; flight practice].
    ['good', NOTED],
    ['possible', { ...NOTED, maxCelsius: 19 }],
    ['possible', { ...NOTED, windKmh: null }],
    ['poor', { ...NOTED, windKmh: 30 }],
    ['possible', { ...NOTED, flyingHours: 0 }],
    ['poor', { ...NOTED, maxCelsius: 19, flyingHours: null, rain: true }],
    ['poor', COLD],
    ['unknown', { ...NOTED, maxCelsius: null }],
  ] as const)('rates a day as %s', (rating, noted) => {
    const desk = aDesk({ today: '2026-06-01' });
    mustOk(saveWeather(desk, { day: '2026-06-01', ...noted }));
    expect(listWeather(desk).days[0]?.rating).toBe(rating);
  });

  test('names the batches whose queens fly, with their flight days so far', () => {
    // Queens out on 16 May: normal flights from the 21st to the 30th, late on 6 June.
    const desk = aDeskWithBoxes('2026-05-24');
    for (const day of ['2026-05-21', '2026-05-22']) mustOk(saveWeather(desk, { day, ...COLD }));
    mustOk(saveWeather(desk, { day: '2026-05-23', ...NOTED }));
    expect(listWeather(desk).flying).toEqual([
      {
        batchId: 'batch-1',
        batch: '26-01',
        flight: {
          from: '2026-05-21',
          to: '2026-05-30',
          days: { good: 1, possible: 0, poor: 2, unknown: 1 },
          putOffDays: 2,
          lateOn: '2026-06-08',
        },
      },
    ]);
    expect(listWeather(onDay(desk, '2026-05-20')).flying).toEqual([]);
    expect(listWeather(aDeskWithBatch('2026-05-24')).flying).toEqual([]);
  });

  test('poor days put the late warning and the giving up off, never past 30 and 35 days', () => {
    const desk = aDeskWithBoxes('2026-06-05');
    const lines = () => getBatch(desk, { batchId: 'batch-1' })?.timetable.lines ?? [];
    const dayOf = (step: string) => lines().find((line) => line.step === step)?.expected;
    expect([dayOf('late-warning'), dayOf('give-up')]).toEqual(['2026-06-06', '2026-06-13']);
    for (const day of ['2026-05-21', '2026-05-22']) mustOk(saveWeather(desk, { day, ...COLD }));
    expect([dayOf('late-warning'), dayOf('give-up')]).toEqual(['2026-06-08', '2026-06-15']);
    for (let day = 21; day <= 31; day += 1) mustOk(saveWeather(desk, { day: `2026-05-${day}`, ...COLD }));
    expect([dayOf('late-warning'), dayOf('give-up')]).toEqual(['2026-06-15', '2026-06-20']);
    expect(getBatch(desk, { batchId: 'batch-1' })?.flight?.putOffDays).toBe(9);
  });
});
