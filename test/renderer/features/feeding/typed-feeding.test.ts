import { expect, test } from 'vitest';
import {
  feedingSheet,
  isNoFeeding,
  readFeedingSheet,
  sameFeeding,
  typedFeeding,
} from '../../../../renderer/features/feeding/typed-feeding.ts';
import { feedAmountText } from '../../../../shared/text/feed-amount.ts';
import { aFeeding } from '../../../builders/feeding.ts';

test('a row shows the amount with its unit, a question mark where it is not known, and nothing where nobody was fed', () => {
  expect(typedFeeding(null, feedAmountText)).toEqual({ amount: '', note: '' });
  expect(typedFeeding(aFeeding({ litres: 1.5, note: 'warm' }), feedAmountText)).toEqual({
    amount: '1.5\u00a0L',
    note: 'warm',
  });
  expect(typedFeeding(aFeeding({ litres: null }), feedAmountText).amount).toBe('?');
});

test('a note alone is a feeding; blanks are none, and make no difference', () => {
  expect(isNoFeeding({ amount: ' ', note: '' })).toBe(true);
  expect(isNoFeeding({ amount: '', note: 'comb honey' })).toBe(false);
  expect(sameFeeding({ amount: '1 ', note: '' }, { amount: '1', note: ' ' })).toBe(true);
  expect(sameFeeding({ amount: '1', note: '' }, { amount: '2', note: '' })).toBe(false);
});

test('the name of a sheet says it all, and what is no such name is none', () => {
  const sheets = [
    { day: '2026-05-28', places: 'hives', feed: 'syrup-1-1', ownFeed: null },
    { day: '2026-05-28', places: 'boxes', feed: 'other', ownFeed: 'Honig: 50 %' },
  ] as const;
  expect(sheets.map(feedingSheet).map(readFeedingSheet)).toEqual(sheets);
  expect(['feeding:today:hives:syrup-1-1:', 'feeding:2026-05-28:hives:stones:'].map(readFeedingSheet)).toEqual([
    null,
    null,
  ]);
});
