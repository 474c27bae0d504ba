import { describe, expect, test } from 'vitest';
import { emptyTally } from '../../../../main/engine/yield/batch-tally.ts';
import { stageCount, stageRate } from '../../../../main/engine/yield/stage-rate.ts';
import type { BatchTally } from '../../../../shared/model/tally.ts';

const aTally = (changes: Partial<BatchTally> = {}): BatchTally => ({ ...emptyTally('b'), ...changes });
const whole = aTally({
  given: 20,
  taken: 16,
  enteredSealing: 16,
  sealed: 12,
  placed: 6,
  emergenceKnown: 6,
  emerged: 5,
  matingKnown: 5,
  proved: 4,
});

describe('the rate of a stage', () => {
  test('sums batches that counted both ends, and says how many they were', () => {
    const rate = stageRate([whole, aTally({ given: 10, taken: 5 }), aTally({ given: 10 })], 'take');
    expect(rate).toMatchObject({ successes: 21, of: 30, batches: 2, rate: 0.7 });
    // Wilson, 21 of 30 at 90 %, by hand: centre (0.7 + 1.3528/30) / (1 + 2.7055/30), half width 1.6449 sqrt(0.007 + 0.000752) / 1.0902.
    expect(rate.interval?.lower).toBeCloseTo(0.5502, 3);
    expect(rate.interval?.upper).toBeCloseTo(0.8166, 3);
  });

  test('without counts there is no figure, not zero', () => {
    expect(stageRate([aTally()], 'mating')).toEqual({ successes: 0, of: 0, batches: 0, rate: null, interval: null });
  });

  test('the whole way multiplies the stages, so that cells not boxed are no loss', () => {
    // 16/20 x 12/16 x 5/6 x 4/5 = 0.4; six of twelve sealed cells were put in boxes.
    expect(stageCount(whole, 'through')?.successes).toBeCloseTo(8, 10);
    expect(stageCount({ ...whole, emergenceKnown: 5 }, 'through')).toBeNull();
    expect(stageCount({ ...whole, matingKnown: 4 }, 'through')).toBeNull();
  });

  test('the whole way is not known before every stage is', () => {
    expect(stageCount(aTally({ given: 20 }), 'through')).toBeNull();
    expect(stageCount(aTally({ given: 20, taken: 16, enteredSealing: 16 }), 'through')).toBeNull();
    const unplaced = { placed: 0, emergenceKnown: 0, emerged: 0, matingKnown: 0, proved: 0 };
    expect(stageCount({ ...whole, ...unplaced }, 'through')).toBeNull();
  });

  test('counts that contradict each other say nothing, and the other stages are as they were', () => {
    const tally = { ...whole, taken: 25 };
    expect(stageCount(tally, 'take')).toBeNull();
    expect(stageCount(tally, 'through')).toBeNull();
    for (const stage of ['sealing', 'emergence', 'mating'] as const)
      expect(stageCount(tally, stage)).toEqual(stageCount(whole, stage));
  });

  test('a batch that ended at nothing counts as nothing', () => {
    expect(stageCount(aTally({ given: 20, taken: 0, enteredSealing: 0, sealed: 0 }), 'through')).toEqual({
      of: 20,
      successes: 0,
    });
    expect(stageCount(aTally({ given: 20, taken: 5, enteredSealing: 5, sealed: 0 }), 'through')).toEqual({
      of: 20,
      successes: 0,
    });
  });
});
