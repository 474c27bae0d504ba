import { expect, test } from 'vitest';
import { followed } from '../../../renderer/components/following.ts';

test.each([
  { what: 'a field nobody typed in follows', seen: '9', typed: '9', saved: '', shown: '' },
  { what: 'a field that is being typed in keeps its typing', seen: '9', typed: '11', saved: '', shown: '11' },
  { what: 'a field keeps what was typed and has just been saved', seen: '', typed: '9', saved: '9', shown: '9' },
])('$what', ({ seen, typed, saved, shown }) => {
  expect(followed({ seen, typed, saved })).toBe(shown);
});

test('rows of fields follow as one', () => {
  const empty = { given: '', taken: '' };
  const counted = { given: '12', taken: '9' };
  expect(followed({ seen: { ...counted }, typed: { ...counted }, saved: empty })).toEqual(empty);
  expect(followed({ seen: empty, typed: { given: '12', taken: '' }, saved: counted })).toEqual({
    given: '12',
    taken: '',
  });
});
