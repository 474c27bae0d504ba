import fc from 'fast-check';
import { expect, test } from 'vitest';
import { celsiusOfFahrenheit, celsiusText, fahrenheitOfCelsius, parseDegrees } from '../../../shared/text/degrees.ts';

// NIST Special Publication 811 (2008), appendix B.8: t/°C = (t/°F - 32)/1.8; its fixed points by hand: water freezes at
// 0 °C = 32 °F and boils at 100 °C = 212 °F; both scales meet at -40.
test.each([
  [0, 32],
  [100, 212],
  [-40, -40],
  [37, 98.6],
])('%s °C is %s °F', (celsius, fahrenheit) => {
  expect(fahrenheitOfCelsius(celsius)).toBeCloseTo(fahrenheit, 9);
  expect(celsiusOfFahrenheit(fahrenheit)).toBeCloseTo(celsius, 9);
});

test('a temperature is written in the unit chosen, to a tenth', () => {
  expect(celsiusText(34.5)).toBe('34.5 °C');
  expect(celsiusText(34.5, 'fahrenheit')).toBe('94.1 °F');
  expect(celsiusText(-5)).toBe('−5 °C');
  expect(celsiusText(-17.7778, 'fahrenheit')).toBe('0 °F');
});

test('a typed unit wins over the one chosen', () => {
  expect(parseDegrees('94.1', 'fahrenheit')).toBeCloseTo(34.5, 9);
  expect(parseDegrees('34,5', 'celsius')).toBe(34.5);
  expect(parseDegrees('94.1 F', 'celsius')).toBeCloseTo(34.5, 9);
  expect(parseDegrees('34.5°C', 'fahrenheit')).toBe(34.5);
});

test.each(['', 'warm', '34.5.1', '1234', '3 4', '°C'])('"%s" is no temperature', (text) => {
  expect(parseDegrees(text, 'celsius')).toBeNull();
});

test('what is written is read back to a tenth of a degree', () => {
  fc.assert(
    fc.property(fc.integer({ min: -400, max: 600 }), fc.constantFrom('celsius', 'fahrenheit'), (tenths, unit) => {
      const read = parseDegrees(celsiusText(tenths / 10, unit), unit);
      expect(read).not.toBeNull();
      expect(Math.abs((read ?? 0) - tenths / 10)).toBeLessThan(0.06);
    }),
  );
});
