import { expect, test } from 'vitest';
import { readWeather, typedWeather } from '../../../renderer/components/weather-form.ts';

const EMPTY = { maxCelsius: '', windKmh: '', rain: 'unknown', flyingHours: '' } as const;

test('what is empty is not known, never nought', () => {
  const nothing = { maxCelsius: null, windKmh: null, rain: null, flyingHours: null };
  expect(readWeather(EMPTY, 'celsius')).toEqual(nothing);
  expect(typedWeather(nothing, 'celsius')).toEqual(EMPTY);
});

test('degrees are read and shown in the unit chosen, with comma or point', () => {
  const noted = { maxCelsius: 21.5, windKmh: 0, rain: false, flyingHours: 2.5 };
  const typed = { maxCelsius: '21,5', windKmh: '0', rain: 'no', flyingHours: '2.5' } as const;
  expect(readWeather(typed, 'celsius')).toEqual(noted);
  // 20 °C is 68 °F.
  expect(typedWeather({ ...noted, maxCelsius: 20 }, 'fahrenheit').maxCelsius).toBe('68');
  expect(readWeather({ ...typed, maxCelsius: '68' }, 'fahrenheit')).toMatchObject({ maxCelsius: 20 });
});

test.each([
  ['maxCelsius', { maxCelsius: 'warm' }],
  ['maxCelsius', { maxCelsius: '70' }],
  ['windKmh', { windKmh: '-3' }],
  ['windKmh', { windKmh: '201' }],
  ['flyingHours', { flyingHours: '6' }],
  ['flyingHours', { flyingHours: 'all day' }],
] as const)('names %s when it cannot be read', (field, changes) => {
  expect(readWeather({ ...EMPTY, ...changes }, 'celsius')).toBe(field);
});
