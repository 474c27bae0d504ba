import { expect, test } from 'vitest';
import { amountTyped } from '../../../../renderer/features/hives/typed-amount.ts';

test.each([
  ['42', 42],
  [' 31,5 ', 31.5],
  ['0.5', 0.5],
  ['', null],
  ['about 40', Number.NaN],
  ['-3', Number.NaN],
])('“%s” is %s', (text, value) => {
  expect(amountTyped(text)).toEqual(value);
});
