import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { migrate, readMigrations } from '../../../main/workbook/migrations.ts';
import { hasWholeSchema, WHOLE_SCHEMA } from '../../../main/workbook/schema-check.ts';
import { MIGRATIONS_FOLDER } from '../../builders/desk.ts';

const migrated = () => {
  const db = new Database(':memory:');
  migrate(db, readMigrations(MIGRATIONS_FOLDER));
  return db;
};

test('the tables and columns every workbook has are those that the migrations make', () => {
  const db = migrated();
  const tables = db
    .prepare<[], string>("SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table'")
    .pluck()
    .all();
  const columns = db.prepare<[string], string>('SELECT name FROM pragma_table_info(?) ORDER BY cid').pluck();
  const made = tables
    .filter((table) => !table.startsWith('sqlite_'))
    .map((table) => [table, columns.all(table).join(' ')]);
  expect(WHOLE_SCHEMA).toEqual(Object.fromEntries(made));
});

test('a workbook without one of its columns is not whole; one with a column more is', () => {
  const db = migrated();
  expect(hasWholeSchema(db)).toBe(true);
  db.exec('ALTER TABLE yard ADD COLUMN somebody_elses TEXT');
  expect(hasWholeSchema(db)).toBe(true);
  db.exec('ALTER TABLE yard DROP COLUMN note');
  expect(hasWholeSchema(db)).toBe(false);
});
