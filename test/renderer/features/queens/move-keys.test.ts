import { expect, test } from 'vitest';
import { MOVE_PLACES, placeOfKey } from '../../../../renderer/features/queens/move-keys.ts';
import { english } from '../../../../shared/text/english/english.ts';

const press = (key: string, ctrlKey = false) => placeOfKey({ key, ctrlKey, metaKey: false, altKey: false });

test('each place has a key of its own, and the line of keys names it', () => {
  const keys = [...english.queens.move.keys.matchAll(/\b([A-Z]) /g)].map((match) => match[1] ?? '');
  expect(keys.map((key) => press(key))).toEqual(MOVE_PLACES);
  expect(keys.map((key) => press(key.toLowerCase()))).toEqual(MOVE_PLACES);
  expect(press('g', true)).toBeNull();
  expect(press('x')).toBeNull();
});
