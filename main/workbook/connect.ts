import { statSync } from 'node:fs';
import Database from 'better-sqlite3';

/** PRAGMA synchronous: 2 = FULL, each commit is on the drive before it is acknowledged. */
const SYNCHRONOUS_FULL = 2;

/**
 * Opens an existing file for writing and takes its lock, or throws SQLITE_BUSY at once when another program has it.
 * The lock mode is set before the first read, so there is never a moment with two writers.
 */
export function connectForWriting(file: string): Database.Database {
  const db = new Database(file, { fileMustExist: true, timeout: 0 });
  noteOpen(db, file);
  try {
    db.pragma('locking_mode = EXCLUSIVE');
    setGuards(db);
    db.exec('BEGIN EXCLUSIVE; COMMIT');
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

export function connectForReading(file: string): Database.Database {
  const db = new Database(file, { readonly: true, fileMustExist: true, timeout: 0 });
  noteOpen(db, file);
  try {
    setGuards(db);
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

/**
 * Write-ahead log with every commit flushed. SQLite as built here falls back to NORMAL on each reopening of a WAL file,
 * which loses acknowledged saves in a power cut; so FULL is set every time, read back, and insisted upon.
 */
export function makeSavesDurable(db: Database.Database): void {
  const mode = db.pragma('journal_mode = WAL', { simple: true });
  if (mode !== 'wal') throw new Error(`The workbook cannot keep a write-ahead log; SQLite answered ${String(mode)}.`);
  db.pragma('synchronous = FULL');
  const level = db.pragma('synchronous', { simple: true });
  if (level !== SYNCHRONOUS_FULL)
    throw new Error(`Saves would not be durable: synchronous is ${String(level)}, not FULL.`);
  // macOS only; without it a flush stops at the drive's own cache. Other systems ignore both.
  db.pragma('fullfsync = ON');
  db.pragma('checkpoint_fullfsync = ON');
}

/** Measures against files that were damaged or made by someone else, and foreign keys, which SQLite leaves off. */
function setGuards(db: Database.Database): void {
  db.pragma('foreign_keys = ON');
  db.pragma('trusted_schema = OFF');
  db.pragma('cell_size_check = ON');
  db.pragma('recursive_triggers = ON');
  db.pragma('mmap_size = 0');
}

/** The connections of this process, by the file itself, not by its name: a file may have several. */
const connections = new Map<string, Set<Database.Database>>();

/** Whether this process has the file open, under whatever name: then it must be read through SQLite only. */
export function isOpenHere(file: string): boolean {
  const identity = identityOf(file);
  return identity !== null && [...(connections.get(identity) ?? [])].some((db) => db.open);
}

function noteOpen(db: Database.Database, file: string): void {
  const identity = identityOf(file);
  if (identity === null) return;
  const stillOpen = [...(connections.get(identity) ?? [])].filter((one) => one.open);
  connections.set(identity, new Set([...stillOpen, db]));
}

/** Device and number of the file. `stat` opens nothing, so it cannot drop a lock. */
export function identityOf(file: string): string | null {
  const stats = statSync(file, { bigint: true, throwIfNoEntry: false });
  return stats === undefined ? null : `${stats.dev}:${stats.ino}`;
}
