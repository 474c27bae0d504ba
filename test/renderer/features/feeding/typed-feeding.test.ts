import { expect, test } from 'vitest';
import { isNoFeeding, sameFeeding, typedFeeding } from '../../../../renderer/features/feeding/typed-feeding.ts';
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
