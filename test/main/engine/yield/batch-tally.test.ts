import { describe, expect, test } from 'vitest';
import { batchTally, emptyTally } from '../../../../main/engine/yield/batch-tally.ts';

describe('the sums of a batch', () => {
  test('one bar not counted makes the sum unknown, not smaller', () => {
    expect(batchTally('b', [{ given: 10, taken: 8 }, { given: 12 }], [])).toMatchObject({
      given: 22,
      taken: null,
      enteredSealing: null,
      sealed: null,
    });
  });

  test('a counted nothing is nothing', () => {
    expect(batchTally('b', [{ given: 10, taken: 0, sealed: 0 }], [])).toMatchObject({
      taken: 0,
      enteredSealing: 0,
      sealed: 0,
    });
  });

  test('cells removed on purpose are no loss', () => {
    expect(batchTally('b', [{ given: 20, taken: 15, removed: 5, sealed: 10 }], [])).toMatchObject({
      enteredSealing: 10,
      sealed: 10,
    });
  });

  test('placed cells whose story is not known are in no denominator', () => {
    const placements = [
      { results: ['out', 'laying', 'proved'], end: null },
      { results: ['out', 'none'], end: null },
      { results: ['cell-failed'], end: null },
      { results: ['out', 'laying'], end: null },
      { results: [], end: null },
    ] as const;
    expect(batchTally('b', [], placements)).toMatchObject({
      placed: 5,
      emergenceKnown: 4,
      emerged: 3,
      matingKnown: 2,
      proved: 1,
      laying: 2,
    });
  });

  test('nothing known is nothing known', () => {
    expect(emptyTally('b')).toMatchObject({ given: null, taken: null, sealed: null, placed: 0, emergenceKnown: 0 });
  });
});
