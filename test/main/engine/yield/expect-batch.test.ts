// Expected counts against the identities of a chain of beta-binomials: with known rates the mean is n times the product of
// the rates (mean of a binomial with a random share; law of total expectation).
import { expect, test } from 'vitest';
import { expectBatch } from '../../../../main/engine/yield/expect-batch.ts';
import type { Believe } from '../../../../main/engine/yield/plan-queens.ts';
import { nodesOfFixed } from '../../../../main/engine/yield/rate-nodes.ts';

/** Rates handed in by the group's only count, so that the sum can be done by hand. */
const known: Believe = ({ groups }) => {
  const mean = (groups[0]?.[0]?.successes ?? 0) / (groups[0]?.[0]?.of ?? 1);
  const rate = { mean, deviation: 0, lower: mean, median: mean, upper: mean };
  return { nodes: nodesOfFixed(mean, 20), rate, bestThird: () => 0, concentration: 20 };
};
const stage = (percent: number, joining = 0) => ({
  groups: [[{ successes: percent, of: 100 }]],
  group: 0,
  joining,
});

test('goes through the stages one after the other', () => {
  expect(expectBatch({ of: 20, stages: [stage(80), stage(75)], already: 0 }, known).mean).toBeCloseTo(12, 9);
});

test('counts those who join at a later stage, and those who are through already', () => {
  const { mean, q05, q95 } = expectBatch({ of: 10, stages: [stage(90), stage(80, 5)], already: 3 }, known);
  expect(mean).toBeCloseTo((10 * 0.9 + 5) * 0.8 + 3, 9);
  expect(q05).toBeGreaterThanOrEqual(3);
  expect(q95).toBeLessThanOrEqual(18);
});

test('nothing more to come leaves what is known', () => {
  expect(expectBatch({ of: 0, stages: [stage(90)], already: 4 }, known)).toMatchObject({ mean: 4, q05: 4, q95: 4 });
});
