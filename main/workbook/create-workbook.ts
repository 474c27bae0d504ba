import { accessSync, chmodSync, constants, existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { type Result, refuse } from '../../shared/kernel/result.ts';
import { flushFile, moveIntoPlace, PRIVATE_FILE, removeLeftover } from './durable-file.ts';
import { APPLICATION_ID, MARKS } from './file-marks.ts';
import { migrate } from './migrations.ts';
import { type OpenSetting, openWorkbookFile } from './open-workbook.ts';
import { openingTrouble } from './opening-trouble.ts';
import type { Workbook } from './workbook.ts';

export interface NewWorkbook {
  readonly file: string;
  readonly name: string;
  readonly kind: Workbook['kind'];
}

/** Makes a new, empty workbook under a name that is free, and opens it. It appears whole or not at all. */
export function createWorkbookFile(wanted: NewWorkbook, setting: OpenSetting): Result<Workbook, Refusal> {
  const { file } = wanted;
  const folder = dirname(file);
  if (!(statSync(folder, { throwIfNoEntry: false })?.isDirectory() ?? false)) {
    return refuse({ kind: 'folder-not-found', field: 'folder', folder });
  }
  if (existsSync(file)) return refuse({ kind: 'file-exists', field: 'name', file });
  const unfinished = `${file}.new`;
  try {
    accessSync(folder, constants.W_OK);
    removeLeftover(unfinished);
    writeEmptyWorkbook(unfinished, wanted, setting);
    chmodSync(unfinished, PRIVATE_FILE);
    flushFile(unfinished);
    if (existsSync(file)) return refuse({ kind: 'file-exists', field: 'name', file });
    moveIntoPlace(unfinished, file);
  } catch (error) {
    return refuse(openingTrouble(error, file));
  } finally {
    removeLeftoverQuietly(unfinished);
  }
  return openWorkbookFile(file, setting);
}

/** The folder of a kind we offer ourselves (documents, demo) may be missing on a new account. */
export function makeFolder(folder: string): void {
  mkdirSync(folder, { recursive: true });
}

function writeEmptyWorkbook(file: string, { name, kind }: NewWorkbook, { migrations }: OpenSetting): void {
  const db = new Database(file, { timeout: 0 });
  try {
    db.pragma('locking_mode = EXCLUSIVE');
    db.pragma(`application_id = ${APPLICATION_ID}`);
    db.pragma('foreign_keys = ON');
    migrate(db, migrations);
    const put = db.prepare('INSERT INTO setting (key, value) VALUES (?, ?)');
    put.run(MARKS.name, JSON.stringify(name));
    put.run(MARKS.kind, JSON.stringify(kind));
  } finally {
    db.close();
  }
}

function removeLeftoverQuietly(file: string): void {
  try {
    removeLeftover(file);
  } catch {
    // A drive that refused the write may refuse the removal too; the next attempt removes it first.
  }
}
