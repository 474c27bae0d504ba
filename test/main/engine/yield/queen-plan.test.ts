// Larvae for 1, 5 and 10 laying queens 9 times in 10 at known rates: 5, 20 and 38, the example of the inverse_offered
// vectors (R 4.2.2, exact beta-binomial chain). Here by the planner, which also has boxes, batches and limits.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { summariseCount } from '../../../../main/engine/yield/count-summary.ts';
import { type QueenPlanAsk, queenPlan } from '../../../../main/engine/yield/queen-plan.ts';
import { nodesOfFixed } from '../../../../main/engine/yield/rate-nodes.ts';
import { sharedFunnel } from '../../../../main/engine/yield/shared-funnel.ts';
import { nodesOfBeta } from '../../../builders/beta-nodes.ts';

const KNOWN: QueenPlanAsk['stages'] = [
  nodesOfFixed(0.72, 12),
  nodesOfFixed(0.93, 25),
  nodesOfFixed(0.88, 15),
  nodesOfFixed(0.75, 8),
];
const plan = (changes: Partial<QueenPlanAsk> = {}) =>
  queenPlan({
    stages: KNOWN,
    wanted: 10,
    chance: 0.9,
    batches: 1,
    cellsPerBuilder: null,
    boxes: null,
    larvaeEach: null,
    ...changes,
  });

describe('how many larvae and boxes', () => {
  test.each([
    [1, 5],
    [5, 20],
    [10, 38],
  ])('%i laying queens 9 times in 10 take %i larvae at known rates', (wanted, larvae) => {
    expect(plan({ wanted }).larvaeEach).toBe(larvae);
  });

  test('what is expected is the product of the rates: 38 x .72 x .93 x .88 x .75 = 16.8', () => {
    // A box for every larva is no limit.
    const { onTheWay, laying } = plan({ larvaeEach: 38, boxes: 38 });
    expect(onTheWay.at(-1)).toBeCloseTo(16.79, 2);
    expect(laying.mean).toBeCloseTo(16.79, 2);
  });

  test('no more queens are on the way than the boxes named, and what is promised is promised of those', () => {
    const { boxes, onTheWay, laying, chance, larvaeEach } = plan({ larvaeEach: 80 });
    const [, , sealed, emerged] = onTheWay;
    expect(sealed).toBeGreaterThan(boxes ?? 0);
    expect(emerged).toBeCloseTo((boxes ?? 0) * 0.88, 10);
    expect(laying.mean).toBeLessThan(boxes ?? 0);
    expect({ chance, laying }).toEqual((({ chance, laying }) => ({ chance, laying }))(plan({ larvaeEach, boxes })));
  });

  test('the boxes found are the fewest that keep the chance', () => {
    const { larvaeEach, boxes } = plan();
    const at = (count: number) => plan({ larvaeEach, boxes: count }).chance;
    expect(at(boxes ?? 0)).toBeGreaterThanOrEqual(0.9);
    expect(at((boxes ?? 0) - 1)).toBeLessThan(0.9);
  });

  test('more larvae never need more boxes, and say how many', () => {
    const { boxes, rows } = plan();
    expect(rows).toHaveLength(3);
    for (const row of rows) expect(row.boxes).toBeLessThanOrEqual(boxes ?? 0);
  });

  test('a limit that stands in the way is named, and lifting it is enough', () => {
    const held = plan({ cellsPerBuilder: 12 });
    expect(held).toMatchObject({ larvaeEach: null, heldBackBy: ['builder'] });
    expect(plan({ boxes: 10 })).toMatchObject({ larvaeEach: null, heldBackBy: ['boxes'] });
    expect(plan({ cellsPerBuilder: 12, boxes: 10 }).heldBackBy).toEqual([]);
  });

  test('batches that share unknown rates need more together than their luck alone would say', () => {
    const unsure: QueenPlanAsk['stages'] = [
      nodesOfBeta(7.2, 2.8, 12),
      nodesOfBeta(9.3, 0.7, 25),
      nodesOfBeta(8.8, 1.2, 15),
      nodesOfBeta(7.5, 2.5, 8),
    ];
    const sure = plan({ batches: 3, wanted: 20 }).larvaeEach ?? 0;
    expect(plan({ batches: 3, wanted: 20, stages: unsure }).larvaeEach).toBeGreaterThan(sure);
  });
});

/** A rate of which one is in two minds: a little lower or a little higher, in hundredths. */
const twoMinds = (hundredths: number) =>
  [-8, 8].map((off) => ({ rate: (hundredths + off) / 100, concentration: 10, weight: 0.5 }));

describe('what is found is the fewest, whatever is asked', () => {
  const drawn = fc.record({
    rates: fc.tuple(...Array.from({ length: 4 }, () => fc.integer({ min: 40, max: 90 }))),
    wanted: fc.integer({ min: 1, max: 12 }),
    chance: fc.constantFrom(0.5, 0.8, 0.9, 0.95),
    cellsPerBuilder: fc.option(fc.integer({ min: 10, max: 60 })),
    boxes: fc.option(fc.integer({ min: 5, max: 40 })),
  });

  test('one larva or one box fewer no longer gives the chance asked for', () => {
    fc.assert(
      fc.property(drawn, ({ rates, ...asked }) => {
        const stages = rates.map(twoMinds) as unknown as QueenPlanAsk['stages'];
        const at = (larvaeEach: number, boxes: number | null) => plan({ ...asked, stages, boxes, larvaeEach }).chance;
        const { larvaeEach, boxes, heldBackBy } = plan({ ...asked, stages });
        if (larvaeEach === null) {
          expect(at(150, asked.boxes)).toBeLessThan(asked.chance);
          if (heldBackBy.includes('boxes')) expect(at(150, null)).toBeGreaterThanOrEqual(asked.chance - 1e-9);
          return;
        }
        expect(at(larvaeEach, asked.boxes)).toBeGreaterThanOrEqual(asked.chance - 1e-9);
        if (larvaeEach > 1) expect(at(larvaeEach - 1, asked.boxes)).toBeLessThan(asked.chance);
        expect(at(larvaeEach, boxes)).toBeGreaterThanOrEqual(asked.chance - 1e-9);
        if (boxes !== null && boxes > 1) expect(at(larvaeEach, boxes - 1)).toBeLessThan(asked.chance);
      }),
      { numRuns: 25 },
    );
  });

  test('several batches at known rates are the exact sum, which the points of the shared chain also give', () => {
    const given = [20, 20, 20];
    const uncertain = KNOWN.map((nodes, stage) => ({ nodes, mostGoOn: stage === 0 ? 15 : null }));
    const chances = sharedFunnel(given, uncertain, 25, 2);
    const { laying } = plan({ batches: 3, larvaeEach: 20, cellsPerBuilder: 15, boxes: 25 });
    expect(laying.mean).toBeCloseTo(summariseCount(chances).mean, 10);
    expect(laying.variance).toBeCloseTo(summariseCount(chances).variance, 9);
    // Three batches without limits: the closed form of the mean.
    expect(plan({ batches: 3, larvaeEach: 20, boxes: 60 }).laying.mean).toBeCloseTo(60 * 0.72 * 0.93 * 0.88 * 0.75, 10);
  });
});
