import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { migrate, readMigrations } from '../../../main/workbook/migrations.ts';
import { MIGRATIONS_FOLDER } from '../../builders/desk.ts';

const SNAPSHOT = fileURLToPath(new URL('../../golden/workbook-columns.txt', import.meta.url));

/**
 * A workbook typed in today must open in twenty years, so tables and columns are only ever added. Lines may be added to
 * the stored list (delete the file and run this test once to write it anew); the review sees what went and why.
 */
test('no table and no column that a workbook has had goes away or changes its type', () => {
  const columns = columnsNow();
  if (!existsSync(SNAPSHOT)) {
    writeFileSync(SNAPSHOT, `${columns.join('\n')}\n`);
    expect.fail('The list was missing and has been written: look at what changed and run again.');
  }
  const stored = readFileSync(SNAPSHOT, 'utf8').trim().split('\n');
  expect(stored.length).toBeGreaterThan(100);
  expect(
    stored.filter((line) => !columns.includes(line)),
    'gone or changed',
  ).toEqual([]);
  expect(
    columns.filter((line) => !stored.includes(line)),
    'new: write the list anew',
  ).toEqual([]);
});

test('every table is strict and refuses a text where a number belongs', () => {
  const db = aFreshSchema();
  const lax = db
    .prepare("SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0")
    .pluck()
    .all();
  expect(lax).toEqual(['sqlite_schema']);
  expect(() => db.exec("INSERT INTO bar VALUES ('a', 'b', 'three')")).toThrow(
    'cannot store TEXT value in INTEGER column',
  );
  db.close();
});

function columnsNow(): readonly string[] {
  const db = aFreshSchema();
  const lines = db
    .prepare<[], string>(
      `SELECT t.name || '.' || c.name || ' ' || c.type || CASE c."notnull" WHEN 1 THEN ' not null' ELSE '' END
       FROM pragma_table_list t JOIN pragma_table_info(t.name) c
       WHERE t.schema = 'main' AND t.type = 'table' AND t.name NOT LIKE 'sqlite%' ORDER BY t.name, c.cid`,
    )
    .pluck()
    .all();
  db.close();
  return lines;
}

function aFreshSchema(): Database.Database {
  const db = new Database(':memory:');
  migrate(db, readMigrations(MIGRATIONS_FOLDER));
  return db;
}
