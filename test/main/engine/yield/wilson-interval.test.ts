import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { USUAL_LEVEL, wilsonInterval } from '../../../../main/engine/yield/wilson-interval.ts';

describe('the range of a share', () => {
  // Newcombe 1998, Statistics in Medicine 17:857, Table I, method 3 (score), 95 %; printed values from memory.
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i at 95 %% is %f to %f', (successes, n, lower, upper) => {
    const interval = wilsonInterval(successes, n, 0.95);
    expect(interval?.lower).toBeCloseTo(lower, 4);
    expect(interval?.upper).toBeCloseTo(upper, 4);
  });

  test('is not known when nothing was counted', () => {
    expect(wilsonInterval(0, 0)).toBeNull();
  });

  test('is about 9 in 10 unless said otherwise', () => {
    expect(wilsonInterval(7, 10)).toEqual(wilsonInterval(7, 10, 0.9));
    expect(USUAL_LEVEL).toBe(0.9);
  });

  const anyCount = fc
    .integer({ min: 1, max: 500 })
    .chain((n) => fc.record({ n: fc.constant(n), successes: fc.integer({ min: 0, max: n }) }));

  test('lies in 0 to 1, holds the share, and mirrors when successes and failures change over', () => {
    fc.assert(
      fc.property(anyCount, ({ n, successes }) => {
        const { lower, upper } = wilsonInterval(successes, n) ?? { lower: Number.NaN, upper: Number.NaN };
        const mirrored = wilsonInterval(n - successes, n);
        expect(lower).toBeGreaterThanOrEqual(0);
        expect(upper).toBeLessThanOrEqual(1);
        expect(lower).toBeLessThanOrEqual(successes / n + 1e-12);
        expect(upper).toBeGreaterThanOrEqual(successes / n - 1e-12);
        expect(mirrored?.lower).toBeCloseTo(1 - upper, 10);
        expect(mirrored?.upper).toBeCloseTo(1 - lower, 10);
      }),
    );
  });

  test('is narrower for more cells of the same share, and wider for more certainty', () => {
    const width = (successes: number, n: number, level?: number) => {
      const interval = wilsonInterval(successes, n, level);
      return interval ? interval.upper - interval.lower : Number.NaN;
    };
    expect(width(80, 100)).toBeLessThan(width(8, 10));
    expect(width(8, 10, 0.95)).toBeGreaterThan(width(8, 10));
  });
});
