import type BetterSqlite3 from 'better-sqlite3';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { extractBytes, readExtract } from './extract.ts';
import { MARKS } from './file-marks.ts';
import { journalSteps, type StepToWrite } from './journal/journal-steps.ts';
import { watchTables } from './journal/journal-triggers.ts';
import { turning, turningBackTo } from './journal/turning.ts';
import { versionOf } from './migrations.ts';
import { makeSafetyCopy, writeCheckedCopy } from './safety-copy.ts';
import { codeOf, notSavedReason } from './save-trouble.ts';
import type { Saving } from './saving.ts';
import { tablesOf } from './tables/all-tables.ts';
import type { ChangeNaming, Tables, Workbook } from './workbook.ts';

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
  const held = holdConnection(db, facts);
  const { live } = held;
  const save: Save = (savingOver) => {
    const obstacle = obstacleTo(facts, held.isClosed());
    if (obstacle) return obstacle;
    if (!live().db.open) return notSaved('drive-error');
    return live().write(savingOver(live()), facts.now, held.reachedTheFile);
  };

  return {
    ...whatItIs(db, facts),
    ...copying(() => live().db, facts),
    ...changing(save, facts.now),
    extract: (name, fill) => extractBytes(live().db, name, fill),
    readExtract: (bytes, read) => readExtract(live().db, bytes, read),
    get changeNumber() {
      return lastChangeOf(live().tables)?.number ?? 0;
    },
    get savedAt() {
      return lastChangeOf(live().tables)?.at ?? null;
    },
    get tables() {
      return live().tables;
    },
    get journal() {
      return live().steps;
    },
    close() {
      held.close();
      facts.afterClose?.();
    },
  };
}

/** The one connection to the file, opened again after a drive error. */
function holdConnection(db: BetterSqlite3.Database, facts: LiveFacts) {
  const readOnly = facts.readOnlyBecause !== null;
  let connection = connectionOf(db, readOnly);
  let isClosed = false;
  function reconnected(): boolean {
    try {
      connection = connectionOf(facts.reconnect(), readOnly);
      return true;
    } catch (error) {
      if (codeOf(error) === null) throw error;
      return false;
    }
  }
  return {
    isClosed: () => isClosed,
    /** Whatever is asked after a drive error tries the file once more. */
    live() {
      if (!connection.db.open && !isClosed) reconnected();
      return connection;
    },
    /** After an error at the end of a save the rows may or may not be in the file: open it again and look. */
    reachedTheFile(changeNumber: number): boolean {
      closeQuietly(connection.db);
      return reconnected() && lastChangeOf(connection.tables)?.number === changeNumber;
    },
    close() {
      isClosed = true;
      closeCleanly(connection.db, readOnly);
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

function whatItIs(db: BetterSqlite3.Database, { name, file, kind, readOnlyBecause, riskyPlace }: LiveFacts) {
  return { name, file, kind, version: versionOf(db), readOnly: readOnlyBecause !== null, readOnlyBecause, riskyPlace };
}

function copying(
  connection: () => BetterSqlite3.Database,
  { safetyFolder, now }: LiveFacts,
): Pick<Workbook, 'keepCopy' | 'saveAs' | 'copyPages'> {
  const opened = () => {
    const db = connection();
    if (!db.open) throw Object.assign(new Error('The drive does not answer.'), { code: 'SQLITE_IOERR' });
    return db;
  };
  return {
    keepCopy: (purpose) =>
      copied(() => (safetyFolder === null ? null : makeSafetyCopy(opened(), safetyFolder, purpose, now()))),
    copyPages: (file) => copyPages(connection(), file),
    saveAs: (file) =>
      copied(() => {
        writeCheckedCopy(opened(), file);
        return null;
      }),
  };
}

/** Copied between two turns of the program: a hundred pages take about a millisecond. */
const PAGES_AT_ONCE = 100;

async function copyPages(db: BetterSqlite3.Database, file: string): ReturnType<Workbook['copyPages']> {
  if (!db.open) return 'not-copied';
  const changes = db.prepare<[string], string>('SELECT value FROM setting WHERE key = ?').pluck();
  const before = changes.get(MARKS.lastChange);
  try {
    await db.backup(file, { progress: () => PAGES_AT_ONCE });
    return db.open ? { changedMeanwhile: changes.get(MARKS.lastChange) !== before } : 'not-copied';
  } catch (error) {
    // Closed meanwhile: the copying is given up.
    if (!db.open) return 'not-copied';
    const code = codeOf(error);
    if (code === null) throw error;
    return isUnreadable(code) ? 'damaged' : 'not-copied';
  }
}

const isUnreadable = (code: string): boolean => /^SQLITE_(CORRUPT|NOTADB|IOERR_(READ|SHORT_READ|CORRUPTFS))/.test(code);

function copied<Value>(copy: () => Value): Result<Value, Refusal> {
  try {
    return ok(copy());
  } catch (error) {
    const reason = notSavedReason(error);
    if (reason === null) throw error;
    return refuse({ kind: 'copy-not-made', reason: reason === 'file-replaced' ? 'drive-error' : reason });
  }
}

function obstacleTo({ readOnlyBecause, stillInPlace }: LiveFacts, isClosed: boolean) {
  if (isClosed) return refuse({ kind: 'no-workbook-open' } as const);
  if (readOnlyBecause !== null) return notSaved('read-only');
  return stillInPlace() ? null : notSaved('file-replaced');
}

function changeStep<Value>(naming: ChangeNaming<Value>, tables: Tables, value: Value): StepToWrite {
  const words = typeof naming === 'function' ? naming(tables, value) : naming;
  const begins = words.did === 'build-demo' || words.did === 'begin-workbook';
  return { kind: begins ? 'begin' : 'change', ofStep: null, words };
}

type Connection = ReturnType<typeof connectionOf>;
type Save = <Value>(savingOver: (connection: Connection) => Saving<Value>) => Result<Value, Refusal>;

const changing = (save: Save, now: () => string): Pick<Workbook, 'change' | 'undo' | 'undoFrom' | 'redo'> => ({
  change: (naming, work) =>
    save(({ tables }) => ({ work, step: (value) => changeStep(naming, tables, value), contradicted: null })),
  undo: () => save((over) => turning({ ...over, now }, 'undo')),
  undoFrom: (step) => save((over) => turningBackTo({ ...over, now }, step)),
  redo: () => save((over) => turning({ ...over, now }, 'redo')),
});

function connectionOf(db: BetterSqlite3.Database, readOnly: boolean) {
  let writing = false;
  const tables = tablesOf(db, () => {
    if (!writing) throw new Error('Written outside a change of the workbook.');
  });
  const steps = journalSteps(db);
  if (!readOnly) watchTables(db);

  /** BEGIN, work, COMMIT. Whatever goes wrong, no transaction is left open. */
  function write<Value>(
    { work, step, contradicted }: Saving<Value>,
    now: () => string,
    reachedTheFile: (changeNumber: number) => boolean,
  ): Result<Value, Refusal> {
    if (writing) throw new Error('A change inside a change.');
    let committing: { readonly number: number; readonly result: Result<Value, Refusal> } | null = null;
    try {
      db.exec('BEGIN IMMEDIATE');
      writing = true;
      const result = work(tables);
      if (!result.ok) return result;
      const at = now();
      if (step && steps.hasOpenChanges()) steps.write(step(result.value), at);
      const number = (lastChangeOf(tables)?.number ?? 0) + 1;
      tables.settings.put(MARKS.lastChange, { number, at } satisfies LastChange);
      committing = { number, result };
      db.exec('COMMIT');
      return result;
    } catch (error) {
      if (contradicted && codeOf(error)?.startsWith('SQLITE_CONSTRAINT')) return contradicted();
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

  return { db, tables, steps, write };
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
      // A failed flush can also leave SQLite saying "locked"; whatever the drive says, the file is let go of.
      if (codeOf(error) === null) throw error;
    }
  }
  db.close();
}
