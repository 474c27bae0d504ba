import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { OWN, POINTERS } from '../../../../main/operations/files/check-whole.ts';
import { WHOLE_KEYS } from '../../../../main/operations/files/whole-workbook.ts';
import { migrate, readMigrations } from '../../../../main/workbook/migrations.ts';
import { MIGRATIONS_FOLDER } from '../../../builders/desk.ts';

const camel = (sql: string): string => sql.replaceAll(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());

/** Tables whose name in the code is not their name in the file with an s. */
const NAMES: Readonly<Record<string, string>> = {
  colony: 'colonies',
  method_copy: 'methodCopies',
  batch: 'batches',
  step_done: 'stepsDone',
  loss: 'losses',
  mating_box: 'boxes',
  queen_feedback: 'queenFeedback',
  weather_day: 'weather',
  wish: 'wishes',
};
const keyOf = (table: string): string => NAMES[table] ?? `${camel(table)}s`;

/** Not part of a file of everything, or reckoned from the rest. */
const LEFT_OUT = /^(journal_|setting$|batch_tally$|sqlite_)/;

const db = new Database(':memory:');
migrate(db, readMigrations(MIGRATIONS_FOLDER));
const tables = (
  db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").pluck().all() as string[]
).filter((name) => !LEFT_OUT.test(name));

describe('what is checked before a file of everything is taken in is what the file itself demands', () => {
  test('for every table', () => {
    expect(tables.map(keyOf).toSorted()).toEqual([...WHOLE_KEYS].toSorted());
  });

  test.each(tables)('%s: rows it points to', (table) => {
    const foreign = db
      .prepare<[string], { from: string; table: string }>('SELECT "from", "table" FROM pragma_foreign_key_list(?)')
      .all(table);
    const demanded = Object.fromEntries(foreign.map((key) => [camel(key.from), keyOf(key.table)]));
    expect(POINTERS[keyOf(table) as keyof typeof POINTERS] ?? {}).toEqual(demanded);
  });

  test.each(tables)('%s: what no two rows may share', (table) => {
    const unique = db
      .prepare<[string], string>("SELECT name FROM pragma_index_list(?) WHERE origin = 'u'")
      .pluck()
      .all(table)
      .map((index) =>
        db.prepare<[string], string>('SELECT name FROM pragma_index_info(?)').pluck().all(index).map(camel),
      );
    expect(unique.length).toBeLessThanOrEqual(1);
    expect(OWN[keyOf(table) as keyof typeof OWN] ?? []).toEqual(unique[0] ?? []);
  });
});
