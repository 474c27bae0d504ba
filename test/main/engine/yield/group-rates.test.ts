// The model's answers against R 4.2.2 on a brute grid stand in the vectors of kind hier3 (npm run vectors). Here: what must
// hold for any counts.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { betaBinomial } from '../../../../main/engine/yield/beta-binomial.ts';
import { countQuantile } from '../../../../main/engine/yield/count-summary.ts';
import { type BatchCount, groupRates } from '../../../../main/engine/yield/group-rates.ts';
import { nextBatches } from '../../../../main/engine/yield/next-batch.ts';
import { nodesOfJoint } from '../../../../main/engine/yield/rate-nodes.ts';

const anyBatch: fc.Arbitrary<BatchCount> = fc
  .tuple(fc.integer({ min: 0, max: 30 }), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([of, share]) => ({ of, successes: Math.round(of * share) }));
const anyGroups = fc.array(fc.array(anyBatch, { maxLength: 4 }), { minLength: 1, maxLength: 3 });
const few = { numRuns: 12 };

describe('rates of groups', () => {
  test('chances of being better add to 1, and so do those of being best', () => {
    fc.assert(
      fc.property(anyGroups, (groups) => {
        const rates = groupRates(groups);
        expect(rates.groups.reduce((sum, group) => sum + group.probabilityBest, 0)).toBeCloseTo(1, 9);
        rates.probabilityBetter.forEach((row, a) => {
          row.forEach((chance, b) => {
            if (a !== b) expect(chance + (rates.probabilityBetter[b]?.[a] ?? 0)).toBeCloseTo(1, 3);
          });
        });
        for (const { lower, median, upper } of rates.groups)
          expect(lower <= median && median <= upper && lower > 0 && upper < 1).toBe(true);
      }),
      few,
    );
  });

  test('the order of groups and batches does not matter, and batches of nothing say nothing', () => {
    fc.assert(
      fc.property(anyGroups, (groups) => {
        const forward = groupRates(groups).groups.map((group) => group.mean);
        const backward = groupRates(
          groups.map((batches) => [...batches, { of: 0, successes: 0 }].toReversed()).toReversed(),
        );
        backward.groups.toReversed().forEach((group, index) => {
          expect(group.mean).toBeCloseTo(forward[index] ?? Number.NaN, 9);
        });
      }),
      few,
    );
  });

  test('successes and failures changed over mirror the rate', () => {
    const groups = [
      [
        { of: 20, successes: 14 },
        { of: 24, successes: 20 },
      ],
      [{ of: 30, successes: 9 }],
    ];
    const mirrored = groups.map((batches) => batches.map(({ of, successes }) => ({ of, successes: of - successes })));
    groupRates(mirrored).groups.forEach((group, index) => {
      expect(1 - group.mean).toBeCloseTo(groupRates(groups).groups[index]?.mean ?? Number.NaN, 6);
    });
  });

  test('one full or empty batch never makes a rate certain', () => {
    const [full] = groupRates([[{ of: 10, successes: 10 }]]).groups;
    expect(full?.mean).toBeLessThan(0.97);
    expect(full?.lower).toBeGreaterThan(0.3);
  });
});

describe('the next batch', () => {
  test('is spread over 0 to n, and lies where the group lies', () => {
    const rates = groupRates([
      [
        { of: 30, successes: 24 },
        { of: 30, successes: 21 },
      ],
    ]);
    const chances = nextBatches(nodesOfJoint(rates.jointByGroup[0] ?? []), 20, 1);
    expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 4);
    expect(countQuantile(chances, 0.5)).toBeGreaterThanOrEqual(13);
    expect(countQuantile(chances, 0.5)).toBeLessThanOrEqual(16);
  });

  test('with nothing known of the spread of batches it is the beta-binomial itself', () => {
    // Uniform on 0 to n for mean 1/2 and concentration 2 (textbook identity).
    for (const chance of betaBinomial(9, 0.5, 2)) expect(chance).toBeCloseTo(0.1, 12);
  });
});
