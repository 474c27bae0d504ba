import { expect, test } from 'vitest';
import { dayOfSheet, draftOf, foundDrafts, otherSheets, sameValue } from '../../../renderer/client/draft-text.ts';

test('a kept text comes back as what was typed', () => {
  expect(draftOf('"windy"', '')).toBe('windy');
  expect(draftOf('{"given":"12","taken":""}', { given: '', taken: '' })).toEqual({ given: '12', taken: '' });
  expect(draftOf('{"day":"2026-05-14"}', { day: null })).toEqual({ day: '2026-05-14' });
});

test.each([
  ['nothing', undefined, ''],
  ['half a text', '{"given":', { given: '' }],
  ['a field more', '{"given":"1","old":"2"}', { given: '' }],
  ['a field less', '{}', { given: '' }],
  ['another kind', '7', ''],
  ['a list for an object', '[]', {}],
  ['a number for a text inside', '{"given":1}', { given: '' }],
])('%s is no draft of this form any more', (_what, text, saved) => {
  expect(draftOf<unknown>(text, saved)).toBeNull();
});

test('values are the same by what they hold', () => {
  expect(sameValue({ given: '1' }, { given: '1' })).toBe(true);
  expect(sameValue({ given: '1' }, { given: '' })).toBe(false);
});

test('half-typed rows are found by sheet and row; what is in the workbook by now is done with', () => {
  const list = { 'look:2026-05-28:a': '"half"', 'look:2026-05-28:b': '"4 "', 'look:2026-05-27:a': '"other day"' };
  const rows = ['a', 'b', 'c'].map((id) => ({ id, now: id === 'b' ? '4' : '' }));
  const { waiting, done } = foundDrafts('look:2026-05-28', rows, list, (a, b) => a.trim() === b.trim());
  expect([...waiting]).toEqual([['a', 'half']]);
  expect(done).toEqual(['b']);
});

test('another day of the sheet in which something waits is named once, the day shown is not', () => {
  const list = { 'look:2026-05-27:a': '""', 'look:2026-05-27:b': '""', 'look:2026-05-28:a': '""', 'looks:x:a': '""' };
  const others = otherSheets('look', 'look:2026-05-28', list);
  expect(others).toEqual(['look:2026-05-27']);
  expect(others.map(dayOfSheet)).toEqual(['2026-05-27']);
});
