import { expect, test } from 'vitest';
import { keyUsedTwice, RESULT_KEYS, resultKeysWith } from '../../../shared/model/look-key.ts';

test('a changed letter replaces its own key only; number pad and order stay', () => {
  const keys = resultKeysWith({ laying: 'E', out: 'A' });
  expect(keys.map((one) => one.digit)).toEqual(RESULT_KEYS.map((one) => one.digit));
  expect(keys.filter((one, index) => one.key !== RESULT_KEYS[index]?.key).map((one) => [one.result, one.key])).toEqual([
    ['laying', 'E'],
    ['out', 'A'],
  ]);
});

test('two results never share a letter', () => {
  expect(keyUsedTwice({})).toBeNull();
  expect(keyUsedTwice({ laying: 'E', out: 'L' })).toBeNull();
  expect(keyUsedTwice({ laying: 'V' })).toEqual({ key: 'V', results: ['laying', 'virgin'] });
});
