// The difference of two groups' rates, against the ratio of plain shares where there is so much data that the model must
// agree with it, and against the comparison of groupRates.
import { describe, expect, test } from 'vitest';
import { groupDifference } from '../../../../main/engine/yield/group-difference.ts';
import { ratesOf, solveGroups } from '../../../../main/engine/yield/group-rates.ts';

const batches = (list: readonly number[], of = 30) => list.map((successes) => ({ successes, of }));

describe('the difference of two groups', () => {
  test("agrees with the plain normal interval where there is much data and batches hardly differ (Wald's, as in Newcombe 1998, Stat. Med. 17:873, method 1)", () => {
    const a = batches(Array.from({ length: 30 }, () => 24));
    const b = batches(Array.from({ length: 30 }, () => 21));
    const { mean, lower, upper } = groupDifference(solveGroups([a, b]), 0, 1);
    const half = 1.6449 * Math.sqrt((0.8 * 0.2 + 0.7 * 0.3) / 900);
    expect(mean).toBeCloseTo(0.1, 2);
    expect(Math.abs(lower - (0.1 - half))).toBeLessThan(0.008);
    expect(Math.abs(upper - (0.1 + half))).toBeLessThan(0.008);
  });

  test('has the means of the groups, and turns round with them', () => {
    const solved = solveGroups([batches([20, 24, 22]), batches([15, 19]), batches([26, 22, 25])]);
    const { groups } = ratesOf(solved);
    const there = groupDifference(solved, 2, 1);
    const back = groupDifference(solved, 1, 2);
    expect(there.mean).toBeCloseTo((groups[2]?.mean ?? 0) - (groups[1]?.mean ?? 0), 4);
    expect(back.mean).toBeCloseTo(-there.mean, 9);
    expect(back.upper).toBeCloseTo(-there.lower, 2);
    expect(back.probabilityNoMatter).toBeCloseTo(there.probabilityNoMatter, 2);
  });

  test('its range holds 0 just where neither is better 19 times in 20', () => {
    const close = solveGroups([batches([20, 22, 24]), batches([21, 20, 19])]);
    const { lower, upper } = groupDifference(close, 0, 1);
    expect(lower < 0 && upper > 0).toBe(true);
    expect(ratesOf(close).probabilityBetter[0]?.[1]).toBeLessThan(0.95);
    const far = solveGroups([batches([27, 28, 27]), batches([12, 11, 13])]);
    expect(groupDifference(far, 0, 1).lower).toBeGreaterThan(0);
    expect(ratesOf(far).probabilityBetter[0]?.[1]).toBeGreaterThan(0.95);
  });
});
