import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { riskyPlaceOf } from '../../../main/workbook/risky-place.ts';
import { aFolder } from '../../builders/workbook-file.ts';

const signs = (type: number | null, marks: readonly string[] = []) => ({
  fileSystemType: () => type,
  exists: (file: string) => marks.includes(file),
});
const EXT4 = 0xef53;

// Numbers from statfs(2), Linux manual pages.
test.each([
  [0x6969, 'NFS'],
  [0x517b, 'SMB'],
  [0xff534d42, 'CIFS'],
  [0xff534d42 - 2 ** 32, 'CIFS'],
  [0xfe534d42, 'SMB'],
  [0x01021997, '9P'],
])('file system number %i lies on another computer: %s', (type, sign) => {
  expect(riskyPlaceOf('/home/a/w.ripecell', signs(type))).toEqual({ kind: 'network', sign });
});

test.each([
  ['ext4', EXT4],
  ['tmpfs', 0x01021994],
  ['btrfs', 0x9123683e],
  ['xfs', 0x58465342],
  ['exFAT', 0x2011bab0],
  ['a system that does not tell', null],
])('%s is no network', (_name, type) => {
  expect(riskyPlaceOf('/home/a/Documents/w.ripecell', signs(type))).toBeNull();
});

// Folder names as the programs make them: from memory.
test.each([
  ['/home/a/Dropbox/bees/w.ripecell', 'Dropbox'],
  ['/home/a/Dropbox (Private)/w.ripecell', 'Dropbox (Private)'],
  ['C:\\Users\\a\\OneDrive - School\\w.ripecell', 'OneDrive - School'],
  ['/Users/a/Library/Mobile Documents/com~apple~CloudDocs/w.ripecell', 'Mobile Documents'],
  ['/home/a/Nextcloud/w.ripecell', 'Nextcloud'],
  ['/home/a/Google Drive/w.ripecell', 'Google Drive'],
])('%s is kept in step by another program', (file, sign) => {
  expect(riskyPlaceOf(file, signs(EXT4))).toEqual({ kind: 'synced', sign });
});

test.each(['/home/a/boxes/w.ripecell', '/home/a/mega bees/w.ripecell', '/home/a/dropboxes/w.ripecell'])(
  '%s only sounds like it',
  (file) => {
    expect(riskyPlaceOf(file, signs(EXT4))).toBeNull();
  },
);

test('a Windows share is a network', () => {
  expect(riskyPlaceOf('\\\\server\\bees\\w.ripecell', signs(null))?.kind).toBe('network');
  expect(riskyPlaceOf('//server/bees/w.ripecell', signs(null))?.kind).toBe('network');
});

test('a mark in a folder above tells, on the real file system', () => {
  const folder = aFolder();
  mkdirSync(join(folder, 'bees', '2026'), { recursive: true });
  const file = join(folder, 'bees', '2026', 'w.ripecell');
  expect(riskyPlaceOf(file)).toBeNull();
  writeFileSync(join(folder, '.stfolder'), '');
  expect(riskyPlaceOf(file)).toEqual({ kind: 'synced', sign: folder });
});
