import type BetterSqlite3 from 'better-sqlite3';
import { tableNames } from '../content-digest.ts';
import { MARKS } from '../file-marks.ts';

const JOURNAL = /^journal_/;
/** What was given out to a calendar cannot be taken back by an undo; its numbers only ever rise. */
const GIVEN_OUT = 'calendar_export';

/** Every table whose rows can be taken back: what a person has typed, and what is kept beside it. */
export const dataTables = (db: BetterSqlite3.Database): readonly string[] =>
  tableNames(db).filter((name) => !JOURNAL.test(name) && name !== GIVEN_OUT);

/** The columns of a table, its key first. */
export const columnsOf = (db: BetterSqlite3.Database, table: string): readonly string[] =>
  db.prepare<[string], string>('SELECT name FROM pragma_table_info(?) ORDER BY cid').pluck().all(table);

/**
 * From here on every row this connection adds, changes or removes is written into the journal with its old and new
 * values, in the same transaction, under the number of the step that is being made. Triggers of the connection, not of
 * the file: made from the tables there are, so a new table is watched from its first row.
 */
export function watchTables(db: BetterSqlite3.Database): void {
  // Kept in memory, so that no second file is written beside the workbook.
  db.pragma('temp_store = MEMORY');
  for (const table of dataTables(db)) db.exec(triggersOf(table, columnsOf(db, table)));
}

/** What says what the file is, and the proof that a change reached it, are no part of what a person typed. */
const MARK_KEYS = Object.values(MARKS)
  .map((key) => `'${key}'`)
  .join(', ');

/** The records whose history is asked for, by the column that says whose a row is. */
export const OWNERS = { batch_id: 'batch', box_id: 'mating_box', colony_id: 'colony', queen_id: 'queen' } as const;

function triggersOf(table: string, columns: readonly string[]): string {
  const [key = 'id'] = columns;
  const row = (which: 'OLD' | 'NEW') =>
    `json_object(${columns.map((column) => `'${column}', ${which}."${column}"`).join(', ')})`;
  const values = (which: 'OLD' | 'NEW') => columns.map((column) => `${which}."${column}"`).join(', ');
  const isData = (which: 'OLD' | 'NEW') => (table === 'setting' ? `${which}."${key}" NOT IN (${MARK_KEYS})` : 'TRUE');
  const owners = ownersOf(table, columns);
  const trigger = (event: string, which: 'OLD' | 'NEW', when: string, old: string, fresh: string) => `
    CREATE TEMP TRIGGER "journal_${event}_${table}" AFTER ${event} ON main."${table}" WHEN ${when} BEGIN
      INSERT INTO journal_change (${['step_id, table_name, row_id, place, old, new', ...owners.keys()].join(', ')})
      VALUES (${[
        `(SELECT coalesce(max(id), 0) + 1 FROM journal_step), '${table}', ${which}."${key}", ${which}.rowid, ${old}, ${fresh}`,
        ...[...owners.values()].map((column) => `${event === 'UPDATE' ? 'NEW' : which}."${column}"`),
      ].join(', ')});
    END;`;
  return [
    trigger('INSERT', 'NEW', isData('NEW'), 'NULL', row('NEW')),
    trigger(
      'UPDATE',
      'OLD',
      `${isData('OLD')} AND (${values('OLD')}) IS NOT (${values('NEW')})`,
      row('OLD'),
      row('NEW'),
    ),
    trigger('DELETE', 'OLD', isData('OLD'), row('OLD'), 'NULL'),
  ].join('');
}

/** Which column says whose a row is, or is its own key; after a change its new value does. The others stay empty. */
const ownersOf = (table: string, columns: readonly string[]): ReadonlyMap<string, string> =>
  new Map(
    Object.entries(OWNERS).flatMap(([column, record]) => {
      if (table === record) return [[column, columns[0] ?? 'id']];
      return columns.includes(column) ? [[column, column]] : [];
    }),
  );
