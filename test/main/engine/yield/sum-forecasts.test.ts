import { expect, test } from 'vitest';
import { sumForecasts } from '../../../../main/engine/yield/sum-forecasts.ts';

test('means and ends of several batches are added', () => {
  const one = { mean: 6.5, lower: 2, upper: 10 };
  expect(sumForecasts([one, { mean: 3, lower: 0, upper: 7 }])).toEqual({ mean: 9.5, lower: 2, upper: 17 });
  expect(sumForecasts([one])).toEqual(one);
  expect(sumForecasts([])).toEqual({ mean: 0, lower: 0, upper: 0 });
});
