import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { draftStore } from '../../../main/workbook/drafts.ts';
import { aFolder } from '../../builders/workbook-file.ts';

test('drafts are kept by workbook and place, and leave nothing behind once they are saved', () => {
  const folder = aFolder();
  const drafts = draftStore(folder);
  drafts.keep('/a.ripecell', 'x', '1');
  drafts.keep('/b.ripecell', 'x', '2');
  drafts.keep('/a.ripecell', 'y', '3');
  expect([drafts.of('/a.ripecell'), drafts.of('/b.ripecell')]).toEqual([{ x: '1', y: '3' }, { x: '2' }]);
  for (const key of ['x', 'y']) drafts.keep('/a.ripecell', key, null);
  expect(JSON.parse(readFileSync(join(folder, 'drafts.json'), 'utf8'))).toEqual({ '/b.ripecell': { x: '2' } });
});

test('of more than 200 the oldest go', () => {
  const drafts = draftStore(aFolder());
  for (let key = 0; key < 205; key += 1) drafts.keep('/a', `k${key}`, 'x');
  expect(Object.keys(drafts.of('/a'))).toEqual(Array.from({ length: 200 }, (_, key) => `k${key + 5}`));
});

test('a file that cannot be read counts as none, and one that cannot be written stops nobody', () => {
  const folder = aFolder();
  writeFileSync(join(folder, 'drafts.json'), '{"half');
  const drafts = draftStore(folder);
  expect(drafts.of('/a')).toEqual({});
  drafts.keep('/a', 'x', '1');
  expect(drafts.of('/a')).toEqual({ x: '1' });
  const blocked = draftStore(join(folder, 'drafts.json', 'below'));
  blocked.keep('/a', 'x', '1');
  expect(blocked.of('/a')).toEqual({});
});

test('a draft named like a part of every object is only a name', () => {
  const drafts = draftStore(aFolder());
  drafts.keep('/a', 'constructor', 'typed');
  expect(drafts.of('/a')).toEqual({ constructor: 'typed' });
  expect(drafts.of('/nowhere')).toEqual({});
});

test('only the owner may read them', { skip: process.platform === 'win32' }, () => {
  const folder = aFolder();
  draftStore(folder).keep('/a', 'x', '1');
  expect(statSync(join(folder, 'drafts.json')).mode & 0o777).toBe(0o600);
});
