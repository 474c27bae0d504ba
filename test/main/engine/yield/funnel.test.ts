// The figures of whole funnels against R 4.2.2 stand in test/vectors/forecast-vectors.json. Here: what must hold for any.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceOfAtLeast, summariseCount } from '../../../../main/engine/yield/count-summary.ts';
import { type FunnelStage, fixedFunnel, funnel, funnelSum, stageTable } from '../../../../main/engine/yield/funnel.ts';
import { boxesNeeded, larvaeNeeded } from '../../../../main/engine/yield/how-many.ts';
import { nodesOfFixed } from '../../../../main/engine/yield/rate-nodes.ts';

interface Rates {
  readonly rate: number;
  readonly concentration: number;
}

const anyRates: fc.Arbitrary<readonly Rates[]> = fc.array(
  fc.record({
    rate: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    concentration: fc.double({ min: 2, max: 60, noNaN: true }),
  }),
  { minLength: 1, maxLength: 4 },
);
const stagesOf = (rates: readonly Rates[], most: number, mostGoOn: number | null = null): readonly FunnelStage[] =>
  rates.map(({ rate, concentration }) => ({ table: stageTable(nodesOfFixed(rate, concentration), most), mostGoOn }));

/**
 * With no limits the final count is Binomial(n, P), P a product of independent betas: mean n·prod m and second factorial
 * moment n(n-1)·prod a(a+1)/((a+b)(a+b+1)) (moments of the beta: Johnson, Kotz & Balakrishnan 1995, ch. 25).
 */
test('mean and variance are those of the product of betas', () => {
  fc.assert(
    fc.property(anyRates, fc.integer({ min: 0, max: 40 }), (rates, given) => {
      const { mean, variance } = summariseCount(funnel(given, stagesOf(rates, given)));
      const first = rates.reduce((product, { rate }) => product * rate, 1);
      const second = rates.reduce(
        (product, { rate, concentration: c }) => (product * rate * (rate * c + 1)) / (c + 1),
        1,
      );
      const expected = given * first;
      expect(mean).toBeCloseTo(expected, 9);
      expect(variance).toBeCloseTo(given * (given - 1) * second + expected - expected * expected, 8);
    }),
    { numRuns: 60 },
  );
});

test('the chain without tables gives the same answer', () => {
  fc.assert(
    fc.property(anyRates, fc.integer({ min: 0, max: 30 }), (rates, given) => {
      const plain = fixedFunnel(
        given,
        rates.map((one) => ({ ...one, mostGoOn: 7 })),
      );
      funnel(given, stagesOf(rates, given, 7)).forEach((chance, count) => {
        expect(plain[count]).toBeCloseTo(chance, 12);
      });
    }),
    { numRuns: 40 },
  );
});

describe('a limit', () => {
  test('never raises a chance, and keeps all of the probability', () => {
    fc.assert(
      fc.property(anyRates, fc.integer({ min: 1, max: 25 }), fc.integer({ min: 0, max: 25 }), (rates, given, limit) => {
        const free = funnel(given, stagesOf(rates, given));
        const held = funnel(given, stagesOf(rates, given, limit));
        expect(held.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 10);
        for (let count = 0; count <= given; count += 1)
          expect(chanceOfAtLeast(held, count)).toBeLessThanOrEqual(chanceOfAtLeast(free, count) + 1e-12);
      }),
      { numRuns: 60 },
    );
  });

  test('boxes shared by two batches hold no more queens than there are boxes', () => {
    const stages = stagesOf([{ rate: 0.9, concentration: 50 }], 60);
    const most = funnelSum([30, 30], [...stages, ...stages], 12).reduce(
      (top, chance, count) => (chance > 0 ? count : top),
      0,
    );
    expect(most).toBe(12);
  });
});

describe('how many', () => {
  test('more larvae never lower the chance, and the answer is the fewest', () => {
    fc.assert(
      fc.property(anyRates, fc.integer({ min: 1, max: 6 }), (rates, wanted) => {
        const stages = stagesOf(rates, 60);
        const answer = larvaeNeeded(wanted, 0.9, stages, 60);
        if (answer.kind === 'notReachable') {
          expect(chanceOfAtLeast(funnel(60, stages), wanted)).toBeLessThan(0.9);
          return;
        }
        expect(chanceOfAtLeast(funnel(answer.larvae, stages), wanted)).toBeCloseTo(answer.chance, 10);
        expect(answer.chance).toBeGreaterThanOrEqual(0.9 - 1e-9);
        expect(answer.chanceOfOneFewer).toBeLessThan(0.9);
      }),
      { numRuns: 40 },
    );
  });

  test('names the limit that stands in the way, and it alone', () => {
    const good = { rate: 0.9, concentration: 50 };
    const [builder] = stagesOf([good], 100, 5);
    const [free] = stagesOf([good], 100);
    if (!builder || !free) throw new Error('two stages were made');
    expect(larvaeNeeded(10, 0.9, [builder, free], 100)).toMatchObject({ kind: 'notReachable', heldBackBy: [0] });
  });

  test('boxes: one queen is sure enough from the first count at which 1 - P(none) reaches the chance', () => {
    // Beta-binomial with mean 1/2 and concentration 2 is uniform on 0..n: P(none) = 1/(n + 1), so 9 boxes give 0.9.
    const uniform = stageTable(nodesOfFixed(0.5, 2), 30);
    expect(boxesNeeded(1, 0.9, uniform)).toBe(9);
    expect(boxesNeeded(1, 0.99, uniform)).toBeNull();
  });
});
