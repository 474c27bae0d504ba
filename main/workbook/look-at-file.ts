import { accessSync, closeSync, constants, openSync, readSync, statSync } from 'node:fs';
import type BetterSqlite3 from 'better-sqlite3';
import type { WorkbookRefusal } from '../../shared/contract/workbook.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { connectForReading } from './connect.ts';
import { APPLICATION_ID } from './file-marks.ts';
import { versionOf } from './migrations.ts';
import { codeOf } from './save-trouble.ts';

/** The two numbers by which a file says what it is. */
interface FileMarks {
  readonly applicationId: number;
  readonly version: number;
}

/** Where an SQLite file keeps them, big-endian in 4 bytes each (SQLite file format, 1.3 "The Database Header"). */
const HEADER = { bytes: 100, versionAt: 60, applicationIdAt: 68 };

export interface FileLook {
  /** The file has more than one name (hard links). Its -wal belongs to one of them only, so it is not written to. */
  readonly manyNames: boolean;
  /** A newer version of the program made it: it may be shown, never written to. */
  readonly isNewer: boolean;
}

/**
 * Says what a file is without changing a byte of it: its kind by `stat`, then its two marks over a connection that
 * can only read. Only after this may a file be opened for writing. Throws what SQLite throws (busy, damaged).
 */
export function lookAtFile(file: string, knownVersion: number): Result<FileLook, WorkbookRefusal> {
  const stats = statSync(file, { throwIfNoEntry: false });
  if (stats === undefined) return refuse({ kind: 'file-not-found', field: 'file', file });
  if (stats.isFile() && !isReadable(file)) return refuse({ kind: 'file-not-readable', field: 'file', file });
  const marks = stats.isFile() && stats.size > 0 ? marksIn(file) : null;
  if (marks === null) return refuse({ kind: 'not-a-workbook', field: 'file', file });
  const judged = judgeMarks(marks, file, knownVersion);
  const isNewer = !judged.ok && judged.refusal.kind === 'workbook-newer';
  return judged.ok || isNewer ? ok({ manyNames: stats.nlink > 1, isNewer }) : judged;
}

function isReadable(file: string): boolean {
  try {
    accessSync(file, constants.R_OK);
    return true;
  } catch {
    return false;
  }
}

/** The same judgement on a file that is open and locked, since it may have changed since it was looked at. */
export function judgeOpenFile(db: BetterSqlite3.Database, knownVersion: number): Result<null, WorkbookRefusal> {
  return judgeMarks(marksOf(db), db.name, knownVersion);
}

function judgeMarks(
  { applicationId, version }: FileMarks,
  file: string,
  knownVersion: number,
): Result<null, WorkbookRefusal> {
  if (applicationId !== APPLICATION_ID || version < 1) return refuse({ kind: 'not-a-workbook', field: 'file', file });
  if (version > knownVersion) return refuse({ kind: 'workbook-newer', field: 'file', file, version });
  return ok(null);
}

/** null when the file is no SQLite file at all. */
function marksIn(file: string): FileMarks | null {
  try {
    const db = connectForReading(file);
    try {
      return marksOf(db);
    } finally {
      db.close();
    }
  } catch (error) {
    if (codeOf(error) === 'SQLITE_NOTADB') return null;
    if (['SQLITE_READONLY_ROLLBACK', 'SQLITE_CANTOPEN'].includes(codeOf(error) ?? '')) return marksInHeader(file);
    throw error;
  }
}

const marksOf = (db: BetterSqlite3.Database): FileMarks => ({
  applicationId: Number(db.pragma('application_id', { simple: true })),
  version: versionOf(db),
});

/**
 * A power cut in the middle of an upgrade or of closing leaves a journal that the next writer rolls back; until then
 * SQLite shows nothing to a reader. Nor does it where a write-ahead log lies on a drive that cannot be written. Reading a file behind SQLite's back drops the locks this process holds on it, but
 * here it can hold none: with a lock on it, SQLite would have answered "busy".
 */
function marksInHeader(file: string): FileMarks {
  const header = Buffer.alloc(HEADER.bytes);
  const handle = openSync(file, 'r');
  try {
    readSync(handle, header, 0, HEADER.bytes, 0);
  } finally {
    closeSync(handle);
  }
  return { applicationId: header.readInt32BE(HEADER.applicationIdAt), version: header.readInt32BE(HEADER.versionAt) };
}
