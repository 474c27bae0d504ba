import type BetterSqlite3 from 'better-sqlite3';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { JournalStep, StoredRow } from '../../../shared/model/journal.ts';
import type { JournalReader } from './journal-steps.ts';
import { columnsOf } from './journal-triggers.ts';

export type Turn = 'undo' | 'redo';

/** The step that would be taken back, or done again. */
export function stepToTurn(journal: JournalReader, way: Turn): Result<JournalStep, Refusal> {
  const step = way === 'undo' ? journal.toUndo() : journal.toRedo();
  return step === null ? refuse({ kind: way === 'undo' ? 'nothing-to-undo' : 'nothing-to-redo' }) : ok(step);
}

interface RowTurn {
  readonly table: string;
  readonly rowId: string;
  readonly place: number;
  readonly from: string | null;
  readonly to: string | null;
}

/**
 * Puts every row of a step back as it was before it (undo), or as it was after it (redo), one by one in the order that
 * was valid the first time. False, and the transaction is to be rolled back, when a row is not as the step left it.
 */
export function turnStep(db: BetterSqlite3.Database, stepId: number, way: Turn): boolean {
  const [from, to, order] = way === 'undo' ? ['new', 'old', 'DESC'] : ['old', 'new', 'ASC'];
  // A row may point to one that comes back only later in this transaction.
  db.pragma('defer_foreign_keys = ON');
  return db
    .prepare<[number], RowTurn>(
      `SELECT table_name AS "table", row_id AS rowId, place, "${from}" AS "from", "${to}" AS "to"
       FROM journal_change WHERE step_id = ? ORDER BY id ${order}`,
    )
    .all(stepId)
    .every((turn) => turnRow(db, turn));
}

function turnRow(db: BetterSqlite3.Database, { table, rowId, place, from, to }: RowTurn): boolean {
  const [key = 'id'] = columnsOf(db, table);
  const row = db.prepare<[string], StoredRow>(`SELECT * FROM "${table}" WHERE "${key}" = ?`).get(rowId) ?? null;
  const expected = parsed(from);
  const wanted = parsed(to);
  if (!isAs(row, expected)) return false;
  if (wanted === null) db.prepare(`DELETE FROM "${table}" WHERE "${key}" = ?`).run(rowId);
  else if (expected === null) addRow(db, table, place, wanted);
  else changeRow(db, `"${table}"`, `"${key}"`, rowId, expected, wanted);
  return true;
}

const parsed = (text: string | null): StoredRow | null => (text === null ? null : (JSON.parse(text) as StoredRow));

/** Columns that were added to the table since are left out of it. */
function isAs(row: StoredRow | null, expected: StoredRow | null): boolean {
  if (row === null || expected === null) return row === expected;
  return Object.entries(expected).every(([column, value]) => row[column] === value);
}

/** The row comes back to the place it had, as long as no other has taken it. */
function addRow(db: BetterSqlite3.Database, table: string, place: number, row: StoredRow): void {
  const taken = db.prepare<[number], unknown>(`SELECT 1 FROM "${table}" WHERE rowid = ?`).get(place) !== undefined;
  const columns = Object.keys(row).map((column) => `"${column}"`);
  const values = Object.values(row);
  const all = taken ? columns : ['rowid', ...columns];
  db.prepare(`INSERT INTO "${table}" (${all.join(', ')}) VALUES (${all.map(() => '?').join(', ')})`).run(
    ...(taken ? values : [place, ...values]),
  );
}

function changeRow(
  db: BetterSqlite3.Database,
  table: string,
  key: string,
  rowId: string,
  from: StoredRow,
  to: StoredRow,
): void {
  const changed = Object.keys(to).filter((column) => from[column] !== to[column]);
  if (changed.length === 0) return;
  const sets = changed.map((column) => `"${column}" = ?`).join(', ');
  db.prepare(`UPDATE ${table} SET ${sets} WHERE ${key} = ?`).run(...changed.map((column) => to[column]), rowId);
}
