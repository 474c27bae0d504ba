// Pearson's r of standardised residuals; two worked corners of the formula.
import { expect, test } from 'vitest';
import { goTogether, stageCorrelation } from '../../../../main/engine/yield/stage-correlation.ts';

const swinging = (second: (index: number) => number) =>
  Array.from({ length: 12 }, (_, index) => [
    { successes: index % 2 === 0 ? 25 : 15, of: 30 },
    { successes: second(index), of: 20 },
  ]);

test('is 1 where both stages swing alike, -1 where they swing against each other', () => {
  expect(stageCorrelation(swinging((index) => (index % 2 === 0 ? 18 : 12)))).toBeCloseTo(1, 9);
  expect(stageCorrelation(swinging((index) => (index % 2 === 0 ? 12 : 18)))).toBeCloseTo(-1, 9);
});

test('is 0 where they have nothing to do with each other', () => {
  // The second stage goes up and down twice as slowly: each combination comes three times.
  expect(stageCorrelation(swinging((index) => (index % 4 < 2 ? 18 : 12)))).toBeCloseTo(0, 9);
});

test('says nothing on fewer than ten batches, without variation, or without counts', () => {
  expect(stageCorrelation(swinging((index) => index).slice(0, 9))).toBeNull();
  expect(stageCorrelation(swinging(() => 15))).toBeNull();
  expect(stageCorrelation(Array.from({ length: 20 }, () => [{ successes: 3, of: 5 }, null]))).toBeNull();
  expect([goTogether(null), goTogether(0.3), goTogether(0.31)]).toEqual([false, false, true]);
});
