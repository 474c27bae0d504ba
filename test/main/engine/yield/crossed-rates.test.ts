// The model's figures against R 4.2.2 (dense Newton, the same grid, importance sampling) stand in the vectors of kinds
// glmm_fixed_sigma and glmm_nested. Here: what must hold for any counts, and when there is nothing to compare.
import { describe, expect, test } from 'vitest';
import type { CrossedBatch } from '../../../../main/engine/yield/crossed-mode.ts';
import { connected, crossedRates } from '../../../../main/engine/yield/crossed-rates.ts';

const batch = (method: number, builder: number, successes: number, of = 30): CrossedBatch => ({
  successes,
  of,
  levels: [method, builder],
});

/** Two methods alike; builder 1 is much the stronger, and method 1 was mostly tried on it. */
const unfair: readonly CrossedBatch[] = [
  batch(0, 0, 12),
  batch(0, 0, 13),
  batch(0, 0, 11),
  batch(0, 1, 26),
  batch(1, 0, 12),
  batch(1, 1, 26),
  batch(1, 1, 25),
  batch(1, 1, 27),
];

describe('methods, allowing for the builder', () => {
  test('a method tried mostly on the strong builder is not called better for it', () => {
    const { probabilityBetter, rates } = crossedRates(unfair, [2, 2]);
    const plain = [62 / 120, 90 / 120];
    expect((plain[1] ?? 0) - (plain[0] ?? 0)).toBeGreaterThan(0.2);
    expect(probabilityBetter[1]?.[0]).toBeGreaterThan(0.25);
    expect(probabilityBetter[1]?.[0]).toBeLessThan(0.75);
    expect(Math.abs((rates[1] ?? 0) - (rates[0] ?? 0))).toBeLessThan(0.05);
  });

  test('one of two is better: the chances add to 1, in whatever order the batches come', () => {
    const one = crossedRates(unfair, [2, 2]);
    const turned = crossedRates(unfair.toReversed(), [2, 2]);
    expect((one.probabilityBetter[0]?.[1] ?? 0) + (one.probabilityBetter[1]?.[0] ?? 0)).toBeCloseTo(1, 12);
    expect(turned.probabilityBetter[0]?.[1]).toBeCloseTo(one.probabilityBetter[0]?.[1] ?? 0, 9);
  });

  test('batches of nothing say nothing', () => {
    const more = crossedRates([...unfair, batch(1, 0, 0, 0)], [2, 2]);
    expect(more.rates).toEqual(crossedRates(unfair, [2, 2]).rates);
  });
});

describe('whether methods can be compared', () => {
  test('two methods on one builder can, also by way of a third', () => {
    expect(connected([batch(0, 0, 1), batch(1, 0, 1)], [2, 1])).toEqual([0, 0]);
    const chain = [batch(0, 0, 1), batch(1, 0, 1), batch(1, 1, 1), batch(2, 1, 1)];
    expect(new Set(connected(chain, [3, 2])).size).toBe(1);
  });

  test('methods that never shared a builder cannot', () => {
    const apart = [batch(0, 0, 20), batch(1, 1, 10)];
    expect(new Set(connected(apart, [2, 2])).size).toBe(2);
    expect(new Set(connected([...apart, batch(1, 0, 0, 0)], [2, 2])).size).toBe(2);
    // Method 0 on builder 1 and method 1 on builder 0: the same numbers, but methods and builders are different things.
    expect(new Set(connected([batch(0, 1, 20), batch(1, 0, 10)], [2, 2])).size).toBe(2);
  });
});
