import { describe, expect, test } from 'vitest';
import { honeyStanding, isStrictlyHygienic, testFigure } from '../../../../main/engine/stock/test-figures.ts';

describe('what one test says', () => {
  test.each([
    // 50 cells pierced, 8 not cleared: 84 % (Büchler et al. 2013, COLOSS BEEBOOK 3.3.4.3).
    ['pin-test', 42, 50, 0.84],
    ['freeze-test', 96, 100, 0.96],
    // 9 mites in 300 bees are 3 per 100 (formula; sample of about 300 bees: Mississippi State University Extension).
    ['mite-wash', 9, 300, 3],
    ['mite-fall', 6, 3, 2],
    ['honey', 42, null, 42],
    ['pin-test', 42, null, null],
    ['mite-wash', 0, 300, 0],
  ] as const)('%s, %s of %s is %s', (kind, counted, outOf, figure) => {
    expect(testFigure({ kind, counted, outOf })).toBe(figure);
  });
});

// Büchler et al. 2013, 3.3.4.2: more than 95 % removed within 24 hours in each of two tests.
describe('the strict rule of hygiene', () => {
  const freeze = (counted: number, hours: number | null = 24) =>
    ({ kind: 'freeze-test', counted, outOf: 100, hours }) as const;
  test('needs more than 95 in 100, both times', () => {
    expect(isStrictlyHygienic([freeze(96), freeze(94)])).toBe(false);
    expect(isStrictlyHygienic([freeze(96), freeze(95)])).toBe(false);
    expect(isStrictlyHygienic([freeze(96), freeze(97)])).toBe(true);
  });
  test('says nothing of one test, of slower counts, or of pin tests', () => {
    expect(isStrictlyHygienic([freeze(99)])).toBeNull();
    expect(isStrictlyHygienic([freeze(99), freeze(99, 48)])).toBeNull();
    expect(isStrictlyHygienic([freeze(99), { kind: 'pin-test', counted: 50, outOf: 50, hours: 24 }])).toBeNull();
  });
  test('looks at the two latest', () => {
    expect(isStrictlyHygienic([freeze(60), freeze(96), freeze(97)])).toBe(true);
  });
});

test('honey stands beside the mean of its yard, which counts from ten hives on', () => {
  // 42 kg where the mean is 35 kg: 7 kg more (arithmetic); at least 10 colonies a yard: Büchler et al. 2013, 3.3.1.
  const nine = honeyStanding(42, [42, 28, 35, 35, 35, 35, 35, 35, 35]);
  expect(nine).toEqual({ kilograms: 42, mean: 35, colonies: 9, enough: false });
  expect(honeyStanding(42, [42, 28, 35, 35, 35, 35, 35, 35, 35, 35]).enough).toBe(true);
});
