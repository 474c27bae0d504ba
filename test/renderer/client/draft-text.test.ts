import { expect, test } from 'vitest';
import { draftOf, sameValue } from '../../../renderer/client/draft-text.ts';

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
