// The real thread on the sources themselves, against the same look made here.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { checkInThread } from '../../../app/adapters/checking-thread.ts';
import { contentDigest } from '../../../main/workbook/content-digest.ts';
import { migrate, readMigrations } from '../../../main/workbook/migrations.ts';
import { checkHere } from '../../../main/workbook/thorough-look.ts';
import { MIGRATIONS_FOLDER } from '../../builders/desk.ts';
import { aFolder } from '../../builders/workbook-file.ts';

const check = checkInThread(join(import.meta.dirname, '../../../app/adapters/checking-worker.ts'));

test('the thread finds what is found here: a sound file, a changed row, a broken file', async () => {
  const file = join(aFolder(), 'w.db');
  const db = new Database(file);
  migrate(db, readMigrations(MIGRATIONS_FOLDER));
  const digest = contentDigest(db);
  db.close();
  const broken = join(aFolder(), 'broken.db');
  writeFileSync(broken, 'SQLite format 3\0 and no more');
  const asked = [
    [file, digest],
    [file, null],
    [file, 'another digest'],
    [broken, null],
  ] as const;
  const found: string[] = [];
  for (const [one, sum] of asked) found.push(await check(one, sum));
  expect(found).toEqual(['sound', 'sound', 'changed', 'damaged']);
  expect(await checkHere(file, 'another digest')).toBe('changed');
});

test('a thread that cannot answer says so', async () => {
  await expect(check(join(aFolder(), 'missing', 'w.db'), null)).rejects.toThrow();
});
