import type BetterSqlite3 from 'better-sqlite3';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { MARKS } from './file-marks.ts';
import { makeSafetyCopy, writeCheckedCopy } from './safety-copy.ts';
import { codeOf, notSavedReason } from './save-trouble.ts';
import { tablesOf } from './tables/all-tables.ts';
import type { Tables, Workbook } from './workbook.ts';

export interface LiveFacts {
  readonly name: string;
  readonly file: string;
  readonly kind: Workbook['kind'];
  readonly readOnlyBecause: Workbook['readOnlyBecause'];
  /** Opens the file once more in the same way, after a drive error; throws when that fails. */
  readonly reconnect: () => BetterSqlite3.Database;
  /** False once another file lies under the name, or none. */
  readonly stillInPlace: () => boolean;
  /** Where safety copies go; null for a workbook that is not on disk. */
  readonly safetyFolder: string | null;
  readonly riskyPlace: Workbook['riskyPlace'];
  readonly afterClose?: () => void;
  /** The present instant, ISO 8601 UTC. */
  readonly now: () => string;
}

export interface LastChange {
  readonly number: number;
  readonly at: string;
}

/** The open workbook over one connection; `db` is already set up and of the present version. */
export function liveWorkbook(db: BetterSqlite3.Database, facts: LiveFacts): Workbook {
  let connection = connectionOf(db);
  let isClosed = false;
  const readOnly = facts.readOnlyBecause !== null;

  /** After an error at the end of a save the rows may or may not be in the file: open it again and look. */
  function reachedTheFile(changeNumber: number): boolean {
    closeQuietly(connection.db);
    return reconnected() && lastChangeOf(connection.tables)?.number === changeNumber;
  }

  function reconnected(): boolean {
    try {
      connection = connectionOf(facts.reconnect());
      return true;
    } catch (error) {
      if (codeOf(error) === null) throw error;
      return false;
    }
  }

  return {
    ...whatItIs(facts),
    ...copying(() => connection.db, facts),
    get changeNumber() {
      return lastChangeOf(connection.tables)?.number ?? 0;
    },
    get savedAt() {
      return lastChangeOf(connection.tables)?.at ?? null;
    },
    get tables() {
      return connection.tables;
    },
    change(label, work) {
      if (isClosed) return refuse({ kind: 'no-workbook-open' });
      if (readOnly) return notSaved('read-only');
      if (connection.isWriting()) throw new Error(`A change inside a change: ${label}.`);
      if (!facts.stillInPlace()) return notSaved('file-replaced');
      if (!connection.db.open && !reconnected()) return notSaved('drive-error');
      return connection.write(work, facts.now, reachedTheFile);
    },
    close() {
      isClosed = true;
      closeCleanly(connection.db, readOnly);
      facts.afterClose?.();
    },
  };
}

/** Number and instant of the last change in the file; null in a file that never had one. */
export function lastChangeOf(tables: Tables): LastChange | null {
  const stored = tables.settings.get(MARKS.lastChange);
  if (typeof stored !== 'object' || stored === null || !('number' in stored) || !('at' in stored)) return null;
  return { number: Number(stored.number), at: String(stored.at) };
}

const notSaved = (reason: 'disk-full' | 'drive-error' | 'read-only' | 'file-replaced') =>
  refuse({ kind: 'not-saved', reason } as const);

function whatItIs({ name, file, kind, readOnlyBecause, riskyPlace }: LiveFacts) {
  return { name, file, kind, readOnly: readOnlyBecause !== null, readOnlyBecause, riskyPlace };
}

function copying(
  connection: () => BetterSqlite3.Database,
  { safetyFolder, now }: LiveFacts,
): Pick<Workbook, 'keepCopy' | 'saveAs'> {
  return {
    keepCopy: (purpose) =>
      copied(() => (safetyFolder === null ? null : makeSafetyCopy(connection(), safetyFolder, purpose, now()))),
    saveAs: (file) =>
      copied(() => {
        writeCheckedCopy(connection(), file);
        return null;
      }),
  };
}

function copied<Value>(copy: () => Value): Result<Value, Refusal> {
  try {
    return ok(copy());
  } catch (error) {
    const reason = notSavedReason(error);
    if (reason === null) throw error;
    return refuse({ kind: 'copy-not-made', reason: reason === 'file-replaced' ? 'drive-error' : reason });
  }
}

function connectionOf(db: BetterSqlite3.Database) {
  let writing = false;
  const tables = tablesOf(db, () => {
    if (!writing) throw new Error('Written outside a change of the workbook.');
  });

  /** BEGIN, work, COMMIT. Whatever goes wrong, no transaction is left open. */
  function write<Value>(
    work: (tables: Tables) => Result<Value, Refusal>,
    now: () => string,
    reachedTheFile: (changeNumber: number) => boolean,
  ): Result<Value, Refusal> {
    let committing: { readonly number: number; readonly result: Result<Value, Refusal> } | null = null;
    try {
      db.exec('BEGIN IMMEDIATE');
      writing = true;
      const result = work(tables);
      if (!result.ok) return result;
      const number = (lastChangeOf(tables)?.number ?? 0) + 1;
      tables.settings.put(MARKS.lastChange, { number, at: now() } satisfies LastChange);
      committing = { number, result };
      db.exec('COMMIT');
      return result;
    } catch (error) {
      const reason = notSavedReason(error);
      if (reason === null) throw error;
      if (reason === 'drive-error' && committing !== null && reachedTheFile(committing.number))
        return committing.result;
      return notSaved(reason);
    } finally {
      writing = false;
      rollBackQuietly(db);
    }
  }

  return { db, tables, write, isWriting: () => writing };
}

function rollBackQuietly(db: BetterSqlite3.Database): void {
  if (!db.open || !db.inTransaction) return;
  try {
    db.exec('ROLLBACK');
  } catch {
    // SQLite has rolled back by itself after a full disk or drive error; nothing is left to do.
  }
}

function closeQuietly(db: BetterSqlite3.Database): void {
  try {
    db.close();
  } catch {
    // The drive has failed under the connection; the handle is gone either way.
  }
}

/**
 * Leaves one plain file without a -wal beside it, so that it can be copied by hand and opened from a read-only drive.
 * What was saved is safe without this; a full or failing drive only leaves the -wal file where it is.
 */
function closeCleanly(db: BetterSqlite3.Database, readOnly: boolean): void {
  if (!db.open) return;
  if (!readOnly && !db.memory) {
    try {
      db.pragma('wal_checkpoint(TRUNCATE)');
      db.pragma('journal_mode = DELETE');
    } catch (error) {
      if (notSavedReason(error) === null) throw error;
    }
  }
  db.close();
}
