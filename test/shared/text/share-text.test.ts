import { expect, test } from 'vitest';
import { amount, perCent, perCentRange } from '../../../shared/text/share-text.ts';

/** What keeps a number and its sign on one line: U+00A0 or the narrow U+202F. */
const KEPT_TOGETHER = /^[\d–]+[\u00a0\u202f]%$/;

test('a share is said in whole per cent, with its sign on the same line', () => {
  expect(perCent(0.733)).toMatch(/^73\D+$/);
  for (const text of [perCent(0.733), perCent(0), perCent(1), perCentRange(0.601, 0.824)])
    expect(text).toMatch(KEPT_TOGETHER);
});

test('a range names its two ends once', () => {
  expect(perCentRange(0.601, 0.824)).toMatch(/^60–82\D+$/);
});

test('nothing and all are 0 and 100', () => {
  expect(perCent(0)).toMatch(/^0\D/);
  expect(perCent(1)).toMatch(/^100\D/);
});

test('whole numbers are plain, others have one decimal', () => {
  expect([amount(12), amount(0), amount(2.25), amount(13.96)]).toEqual(['12', '0', '2.3', '14.0']);
});
