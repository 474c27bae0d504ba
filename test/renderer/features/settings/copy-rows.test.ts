import { expect, test } from 'vitest';
import { copyRows } from '../../../../renderer/features/settings/copy-rows.ts';
import { folderOf } from '../../../../renderer/features/settings/folder-of.ts';
import type { SafetyCopy } from '../../../../shared/contract/copies.ts';

const aCopy = (place: SafetyCopy['place'], name: string, checked = true): SafetyCopy => ({
  id: `${place}:${name}`,
  file: `/${place}/${name}`,
  place,
  at: '2026-06-01T12:00:00.000Z',
  purpose: 'close',
  bytes: 4096,
  checked,
  counts: null,
});

test('a copy in both places is one line, in the order of the list', () => {
  const rows = copyRows([aCopy('second', 'b'), aCopy('here', 'b'), aCopy('here', 'a'), aCopy('second', 'old: one')]);
  expect(rows.map(({ id, where }) => [id, where])).toEqual([
    ['here:b', 'both'],
    ['here:a', 'here'],
    ['second:old: one', 'second'],
  ]);
});

test('the checked one of two stands for both', () => {
  expect(copyRows([aCopy('here', 'a', false), aCopy('second', 'a')])).toMatchObject([
    { id: 'second:a', where: 'both' },
  ]);
});

test.each([
  ['/home/a/bees/Queens.ripecell', '/home/a/bees'],
  ['C:\\Users\\a\\Queens.ripecell', 'C:\\Users\\a'],
  ['Queens.ripecell', ''],
])('the folder of %s is %s', (file, folder) => {
  expect(folderOf(file)).toBe(folder);
});
