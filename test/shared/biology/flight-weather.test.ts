import { expect, test } from 'vitest';
import { rateFlightDay } from '../../../shared/biology/flight-weather.ts';

// Büchler et al. 2013, section 2.2.1: above 20 °C, up to 24 km/h of wind; practice from 18 °C (thewalrusandthehoneybee.com).
test.each([
  ['warm, calm and sunny', { maxCelsius: 22, windKmh: 10, sun: true }, 'good'],
  ['borderline warmth', { maxCelsius: 19, windKmh: 15, sun: true }, 'possible'],
  ['exactly 20 degrees', { maxCelsius: 20, windKmh: 5, sun: true }, 'possible'],
  ['exactly 18 degrees', { maxCelsius: 18, windKmh: 5, sun: true }, 'possible'],
  ['below 18 degrees', { maxCelsius: 17.9, windKmh: 5, sun: true }, 'poor'],
  ['too windy', { maxCelsius: 22, windKmh: 30, sun: true }, 'poor'],
  ['wind at the limit', { maxCelsius: 22, windKmh: 24, sun: true }, 'good'],
  ['warm without sun', { maxCelsius: 22, windKmh: 5, sun: false }, 'possible'],
  ['cool without sun', { maxCelsius: 19, windKmh: 5, sun: false }, 'poor'],
  ['wind not noted', { maxCelsius: 22, windKmh: null, sun: true }, 'possible'],
  ['sun not noted', { maxCelsius: 22, windKmh: 5, sun: null }, 'possible'],
  ['warmth not noted', { maxCelsius: null, windKmh: 5, sun: true }, 'unknown'],
] as const)('%s', (_name, weather, rating) => {
  expect(rateFlightDay(weather)).toBe(rating);
});
