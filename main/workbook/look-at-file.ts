import { accessSync, closeSync, constants, openSync, readSync, statSync } from 'node:fs';
import type BetterSqlite3 from 'better-sqlite3';
import type { WorkbookRefusal } from '../../shared/contract/workbook.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { isOpenHere } from './connect.ts';
import { APPLICATION_ID } from './file-marks.ts';
import { versionOf } from './migrations.ts';

/** The two numbers by which a file says what it is. */
interface FileMarks {
  readonly applicationId: number;
  readonly version: number;
}

/**
 * SQLite file format, 1.3 "The Database Header": the first 16 bytes, the mode in bytes 18 and 19 (1 rollback journal,
 * 2 write-ahead log), and the two numbers, big-endian in 4 bytes each.
 */
const HEADER = { bytes: 100, magic: 'SQLite format 3\0', modeAt: 18, logMode: 2, versionAt: 60, applicationIdAt: 68 };

export interface FileLook {
  /** The file has more than one name (hard links). Its -wal belongs to one of them only, so it is not written to. */
  readonly manyNames: boolean;
  /** A newer version of the program made it: it may be shown, never written to. */
  readonly isNewer: boolean;
  /** It was not closed cleanly, or copied while open: even reading it through SQLite makes files beside it. */
  readonly isInLogMode: boolean;
}

/**
 * Says what a file is without changing a byte of it or making a file beside it: its kind by `stat`, then its header.
 * SQLite itself, only reading, would leave two files beside one that is in write-ahead-log mode. Reading a file behind
 * SQLite's back drops the locks this process holds on it, so one that is open here is not read.
 */
export function lookAtFile(file: string, knownVersion: number): Result<FileLook, WorkbookRefusal> {
  const stats = statSync(file, { throwIfNoEntry: false });
  if (stats === undefined) return refuse({ kind: 'file-not-found', field: 'file', file });
  if (!stats.isFile()) return refuse({ kind: 'not-a-workbook', field: 'file', file });
  if (isOpenHere(file)) return refuse({ kind: 'workbook-open-elsewhere', field: 'file', file });
  if (!isReadable(file)) return refuse({ kind: 'file-not-readable', field: 'file', file });
  const header = headerOf(file);
  if (header === null) return refuse({ kind: 'not-a-workbook', field: 'file', file });
  const judged = judgeMarks(header, file, knownVersion);
  const isNewer = !judged.ok && judged.refusal.kind === 'workbook-newer';
  return judged.ok || isNewer ? ok({ manyNames: stats.nlink > 1, isNewer, isInLogMode: header.isInLogMode }) : judged;
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
  const applicationId = Number(db.pragma('application_id', { simple: true }));
  return judgeMarks({ applicationId, version: versionOf(db) }, db.name, knownVersion);
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
function headerOf(file: string): (FileMarks & { readonly isInLogMode: boolean }) | null {
  const header = Buffer.alloc(HEADER.bytes);
  const handle = openSync(file, 'r');
  try {
    if (readSync(handle, header, 0, HEADER.bytes, 0) < HEADER.bytes) return null;
  } finally {
    closeSync(handle);
  }
  if (header.toString('latin1', 0, HEADER.magic.length) !== HEADER.magic) return null;
  return {
    applicationId: header.readInt32BE(HEADER.applicationIdAt),
    version: header.readInt32BE(HEADER.versionAt),
    isInLogMode: header[HEADER.modeAt] === HEADER.logMode,
  };
}
