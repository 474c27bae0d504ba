import { expect, test } from 'vitest';
import { saveWeather } from '../../../../main/operations/weather/save-weather.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';

const NOTED = { day: '2026-05-20', maxCelsius: 21.5, windKmh: 10, rain: false, flyingHours: 3 };
const NOTHING = { day: '2026-05-20', maxCelsius: null, windKmh: null, rain: null, flyingHours: null };

test('a day is noted once, corrected in place, and taken out when nothing is left of it', () => {
  const desk = aDesk();
  const all = () => desk.workbook.tables.weather.all().map(({ id: _, ...weather }) => weather);
  mustOk(saveWeather(desk, NOTED));
  mustOk(saveWeather(desk, { ...NOTED, flyingHours: 0, rain: true }));
  expect(all()).toEqual([{ ...NOTED, flyingHours: 0, rain: true }]);
  expect(mustOk(saveWeather(desk, NOTHING))).toBeNull();
  expect(all()).toEqual([]);
  expect(mustOk(saveWeather(desk, NOTHING))).toBeNull();
});
