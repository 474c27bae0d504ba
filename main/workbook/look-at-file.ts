import { statSync } from 'node:fs';
import type { WorkbookRefusal } from '../../shared/contract/workbook.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { connectForReading } from './connect.ts';
import { APPLICATION_ID } from './file-marks.ts';
import { versionOf } from './migrations.ts';
import { codeOf } from './save-trouble.ts';

export interface FileLook {
  readonly version: number;
  /** The file has more than one name (hard links). Its -wal belongs to one of them only, so it is not written to. */
  readonly manyNames: boolean;
}

/**
 * Says what a file is without changing a byte of it: its kind by `stat`, then its two marks over a connection that
 * can only read. Only after this may a file be opened for writing. Throws what SQLite throws (busy, damaged).
 */
export function lookAtFile(file: string, knownVersion: number): Result<FileLook, WorkbookRefusal> {
  const stats = statSync(file, { throwIfNoEntry: false });
  if (stats === undefined) return refuse({ kind: 'file-not-found', field: 'file', file });
  const notAWorkbook = refuse({ kind: 'not-a-workbook', field: 'file', file } as const);
  if (!stats.isFile() || stats.size === 0) return notAWorkbook;
  try {
    const db = connectForReading(file);
    try {
      if (db.pragma('application_id', { simple: true }) !== APPLICATION_ID) return notAWorkbook;
      const version = versionOf(db);
      if (version < 1) return notAWorkbook;
      if (version > knownVersion) return refuse({ kind: 'workbook-newer', field: 'file', file, version });
      return ok({ version, manyNames: stats.nlink > 1 });
    } finally {
      db.close();
    }
  } catch (error) {
    if (codeOf(error) === 'SQLITE_NOTADB') return notAWorkbook;
    throw error;
  }
}
