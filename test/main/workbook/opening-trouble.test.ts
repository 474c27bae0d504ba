import { describe, expect, test } from 'vitest';
import { openingTrouble, withSecondThoughts } from '../../../main/workbook/opening-trouble.ts';

const sqliteError = (code: string) => Object.assign(new Error('simulated'), { code });

/** Fails so many times with the code, then answers how often it was asked. */
function failing(times: number, code: string) {
  let asked = 0;
  return () => {
    asked += 1;
    if (asked <= times) throw sqliteError(code);
    return asked;
  };
}

describe('an opening is tried again', () => {
  test.each([
    { code: 'SQLITE_BUSY', times: 7 },
    { code: 'SQLITE_CORRUPT', times: 2 },
    { code: 'SQLITE_IOERR_CORRUPTFS', times: 2 },
  ])('after $code, $times times and no more', ({ code, times }) => {
    expect(withSecondThoughts(1, failing(times, code))).toBe(times + 1);
    expect(() => withSecondThoughts(1, failing(times + 1, code))).toThrow('simulated');
  });

  test('but not after anything else', () => {
    expect(() => withSecondThoughts(1, failing(1, 'SQLITE_FULL'))).toThrow('simulated');
  });
});

test.each([
  ['SQLITE_BUSY_RECOVERY', { kind: 'workbook-open-elsewhere', field: 'file', file: '/docs/q.ripecell' }],
  ['SQLITE_CORRUPT', { kind: 'workbook-damaged', field: 'file', file: '/docs/q.ripecell' }],
  ['SQLITE_CANTOPEN', { kind: 'place-not-writable', field: 'folder', folder: '/docs' }],
  ['EACCES', { kind: 'place-not-writable', field: 'folder', folder: '/docs' }],
  ['SQLITE_NOTADB', { kind: 'workbook-damaged', field: 'file', file: '/docs/q.ripecell' }],
  ['SQLITE_FULL', { kind: 'drive-refused', field: 'file', file: '/docs/q.ripecell', reason: 'disk-full' }],
  ['ENOSPC', { kind: 'drive-refused', field: 'file', file: '/docs/q.ripecell', reason: 'disk-full' }],
  ['SQLITE_IOERR_READ', { kind: 'drive-refused', field: 'file', file: '/docs/q.ripecell', reason: 'drive-error' }],
])('%s while opening is told as %j', (code, refusal) => {
  expect(openingTrouble(sqliteError(code), '/docs/q.ripecell')).toEqual(refusal);
});

test('a header byte that SQLite can only tell in words is damage, not a mistake of ours', () => {
  const error = Object.assign(new Error('unsupported file format'), { code: 'SQLITE_ERROR' });
  expect(openingTrouble(error, '/docs/q.ripecell').kind).toBe('workbook-damaged');
});

test('a mistake of our own is thrown on', () => {
  expect(() => openingTrouble(new TypeError('ours'), '/docs/q.ripecell')).toThrow('ours');
  expect(() => openingTrouble(sqliteError('SQLITE_CONSTRAINT'), '/docs/q.ripecell')).toThrow('simulated');
});
