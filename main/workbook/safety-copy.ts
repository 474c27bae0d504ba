import { chmodSync, existsSync, mkdirSync, readdirSync, unlinkSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type BetterSqlite3 from 'better-sqlite3';
import { z } from 'zod';
import type { CopyPurpose } from '../../shared/contract/copies.ts';
import { connectForReading, connectForWriting } from './connect.ts';
import { contentDigest, tableNames } from './content-digest.ts';
import { type CopyNote, countsOf, sha256Of, writeNote } from './copy-note.ts';
import { flushFile, moveIntoPlace, PRIVATE_FILE, PRIVATE_FOLDER, removeLeftover } from './durable-file.ts';
import { MARKS, WORKBOOK_ENDING } from './file-marks.ts';
import { versionOf } from './migrations.ts';
import { codeOf } from './save-trouble.ts';
import { storedValue } from './tables/setting-table.ts';
import type { Soundness } from './workbook.ts';

/**
 * Writes a copy of the open workbook, checks it row for row, and only then gives it its name. Returns that name.
 * A copy that could not be finished leaves nothing behind; older copies are not touched. Beside the copy lies a note
 * with its date, counts and sums; a copy cut off from its note is still a whole copy.
 */
export function makeSafetyCopy(db: BetterSqlite3.Database, folder: string, purpose: CopyPurpose, now: string): string {
  mkdirSync(folder, { recursive: true, mode: PRIVATE_FOLDER });
  const copy = freeName(
    folder,
    `${basename(db.name, WORKBOOK_ENDING)} ${now.slice(0, 19).replaceAll(':', '')} ${purpose}`,
  );
  const digest = writeCheckedCopy(db, copy);
  writeNote(copy, { ...factsOf(db), at: now, purpose, digest, ...sha256Of(copy) });
  return copy;
}

/** All rows of the open workbook into a new file that appears under its name whole or not at all. Returns their digest. */
export function writeCheckedCopy(db: BetterSqlite3.Database, file: string): string {
  const part = `${file}.part`;
  try {
    removeLeftover(part);
    db.prepare('VACUUM INTO ?').run(part);
    chmodSync(part, PRIVATE_FILE);
    flushFile(part);
    const digest = contentDigest(db);
    if (!isSound(part, digest)) {
      throw Object.assign(new Error(`The copy ${part} does not match the workbook.`), { code: 'EIO' });
    }
    moveIntoPlace(part, file);
    return digest;
  } finally {
    removeLeftover(part);
  }
}

/** Clears away copies that were cut short, and notes of copies that are gone; called when the program starts. */
export function removeUnfinishedCopies(folder: string): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) {
    const file = join(folder, name);
    if (/\.part(-journal)?$/.test(name)) removeLeftover(file);
    else if (name.endsWith(`${WORKBOOK_ENDING}.json`) && !existsSync(file.slice(0, -'.json'.length))) unlinkSync(file);
  }
}

/** Are the pages whole, the references whole, and, where the digest is known, every row as it was? */
export function isSound(file: string, expectedDigest: string | null): boolean {
  const copy = connectForReading(file);
  try {
    return soundnessOf(copy, expectedDigest) === 'sound';
  } finally {
    copy.close();
  }
}

/**
 * 'damaged': pages or references are broken. 'changed': all is well formed and some row is not what it was, which
 * SQLite's own check does not notice. Throws what SQLite throws on reading.
 */
function soundnessOf(db: BetterSqlite3.Database, expectedDigest: string | null): Soundness {
  const verdict = db.pragma('integrity_check(1)', { simple: true });
  const broken = db.pragma('foreign_key_check');
  if (verdict !== 'ok' || !Array.isArray(broken) || broken.length > 0) return 'damaged';
  return expectedDigest === null || contentDigest(db) === expectedDigest ? 'sound' : 'changed';
}

/** The place or another program stands in the way; nothing is said about the file. */
const NO_VERDICT = /^SQLITE_(BUSY|LOCKED|CANTOPEN|FULL|READONLY)/;

/**
 * The same of a file that nobody has open, in whatever mode its log was. What cannot even be read is damaged: the
 * statements are our own and fixed, so what SQLite objects to is what it reads.
 */
export function soundnessOfFile(file: string, expectedDigest: string | null): Soundness {
  let db: BetterSqlite3.Database | null = null;
  try {
    db = connectForWriting(file);
    return soundnessOf(db, expectedDigest);
  } catch (error) {
    const code = codeOf(error);
    if (code === null || NO_VERDICT.test(code)) throw error;
    return 'damaged';
  } finally {
    db?.close();
  }
}

/** A name in the same folder that no file has. */
export function freeName(folder: string, name: string): string {
  for (let attempt = 1; ; attempt += 1) {
    const file = join(folder, `${name}${attempt === 1 ? '' : ` (${attempt})`}${WORKBOOK_ENDING}`);
    if (!existsSync(file)) return file;
  }
}

const LastChange = z.object({ number: z.int().nonnegative(), at: z.string() });

function factsOf(
  db: BetterSqlite3.Database,
): Pick<CopyNote, 'name' | 'file' | 'changeNumber' | 'changedAt' | 'lastStep' | 'version' | 'counts'> {
  const marks = db.prepare<[string], string>('SELECT value FROM setting WHERE key = ?').pluck();
  const mark = (key: string): unknown => storedValue(marks.get(key) ?? 'null');
  const name = mark(MARKS.name);
  const last = mark(MARKS.lastChange);
  const changed = LastChange.safeParse(last);
  return {
    name: typeof name === 'string' ? name : basename(db.name, WORKBOOK_ENDING),
    file: join(dirname(db.name), basename(db.name)),
    changeNumber: changed.success ? changed.data.number : 0,
    changedAt: changed.success ? changed.data.at : null,
    lastStep: lastStepOf(db),
    version: versionOf(db),
    counts: countsOf(db),
  };
}

function lastStepOf(db: BetterSqlite3.Database): CopyNote['lastStep'] {
  if (!tableNames(db).includes('journal_step')) return null;
  const last = db.prepare<[], { readonly id: number; readonly at: string }>(
    'SELECT id, at FROM journal_step ORDER BY id DESC LIMIT 1',
  );
  return last.get() ?? null;
}
