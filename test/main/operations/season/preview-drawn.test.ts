// The worked example is Efron & Morris 1977 (Scientific American 236:119): 18 shares of 45, of which 0.212 of the distance from
// the mean is kept, so that the best, 18 of 45 = 0.400, is drawn to 0.294.
import { expect, test } from 'vitest';
import { previewDrawn } from '../../../../main/operations/season/preview-drawn.ts';
import { aDesk } from '../../../builders/desk.ts';

const HITS = [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7];

test('draws the published example as far as published', async () => {
  const { rows, kept } = await previewDrawn(aDesk(), { rows: HITS.map((successes) => ({ successes, of: 45 })) });
  expect(kept).toBeCloseTo(0.212, 3);
  expect(rows[0]?.plain).toBeCloseTo(0.4, 9);
  expect(rows[0]?.byHand).toBeCloseTo(0.294, 3);
  expect(rows[0]?.byHandEvened).toBeCloseTo(0.29, 3);
  // The model agrees in kind: nearer the mean (0.265) than the plain share, and no further than it.
  expect(rows[0]?.model.mean).toBeGreaterThan(0.265);
  expect(rows[0]?.model.mean).toBeLessThan(0.34);
});

test('has no rule by hand for batches of different size or fewer than four, but the model has an answer', async () => {
  const uneven = await previewDrawn(aDesk(), {
    rows: [
      { successes: 9, of: 10 },
      { successes: 20, of: 40 },
      { successes: 5, of: 10 },
      { successes: 5, of: 10 },
    ],
  });
  expect(uneven).toMatchObject({ kept: null, rows: [{ byHand: null, byHandEvened: null }, {}, {}, {}] });
  const [small, large] = uneven.rows;
  // The small batch is drawn further than the large one.
  expect(0.9 - (small?.model.mean ?? 0)).toBeGreaterThan(Math.abs(0.5 - (large?.model.mean ?? 0)));
  const two = await previewDrawn(aDesk(), { rows: HITS.slice(0, 3).map((successes) => ({ successes, of: 45 })) });
  expect(two.kept).toBeNull();
});

// None of 20 at 9 in 10: the exact upper end is 1 - 0.05^(1/20), Wilson's z²/(20 + z²) with z = 1.644854 (closed forms; the
// ways: Wilson 1927, Clopper & Pearson 1934, Brown, Cai & DasGupta 2001).
test('beside the model, the range of one batch in three other ways; the exact one is the widest', async () => {
  const { rows } = await previewDrawn(aDesk(), { rows: [0, 9].map((successes) => ({ successes, of: 20 })) });
  const [none, some] = rows.map(({ others }) => others);
  expect(none?.exact.upper).toBeCloseTo(1 - 0.05 ** (1 / 20), 10);
  expect(none?.wilson.upper).toBeCloseTo(1.6448536 ** 2 / (20 + 1.6448536 ** 2), 6);
  expect([none?.exact.lower, none?.wilson.lower, none?.jeffreys.lower]).toEqual([0, 0, 0]);
  const width = (way: 'wilson' | 'jeffreys' | 'exact') => (some ? some[way].upper - some[way].lower : 0);
  expect(width('exact')).toBeGreaterThan(width('jeffreys'));
  expect(width('jeffreys')).toBeGreaterThan(width('wilson'));
});
