import { expect, test } from 'vitest';
import { followedRows } from '../../../renderer/components/followed-rows.ts';

const following = (busy: readonly string[] = []) => ({
  empty: '',
  same: (a: string, b: string) => a === b,
  isBusy: (id: string) => busy.includes(id),
});
const shown = (typed: string, saved: string) => ({ typed: new Map([['k1', typed]]), saved: new Map([['k1', saved]]) });

test('a row follows the workbook, but what is being typed stays', () => {
  const rows = [{ id: 'k1', now: '500 g' }];
  expect(followedRows(rows, shown('0.5', '0.5'), following())).toEqual(shown('500 g', '500 g'));
  expect(followedRows(rows, shown('0.57', '0.5'), following())).toEqual(shown('0.57', '500 g'));
});

test('a row being saved or refused is left as it is, and nothing new is made where nothing changed', () => {
  const before = shown('plenty', 'plenty');
  expect(followedRows([{ id: 'k1', now: '' }], before, following(['k1']))).toBe(before);
  expect(followedRows([{ id: 'k1', now: 'plenty' }], before, following())).toBe(before);
});
