import { chmodSync, existsSync, mkdirSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import type BetterSqlite3 from 'better-sqlite3';
import { connectForReading } from './connect.ts';
import { contentDigest } from './content-digest.ts';
import { flushFile, moveIntoPlace, PRIVATE_FILE, PRIVATE_FOLDER, removeLeftover } from './durable-file.ts';
import { WORKBOOK_ENDING } from './file-marks.ts';

/**
 * Writes a copy of the open workbook, checks it row for row, and only then gives it its name. Returns that name.
 * A copy that could not be finished leaves nothing behind; older copies are not touched.
 */
export function makeSafetyCopy(db: BetterSqlite3.Database, folder: string, purpose: string, now: string): string {
  mkdirSync(folder, { recursive: true, mode: PRIVATE_FOLDER });
  const copy = freeName(
    folder,
    `${basename(db.name, WORKBOOK_ENDING)} ${now.slice(0, 19).replaceAll(':', '')} ${purpose}`,
  );
  const part = `${copy}.part`;
  try {
    db.prepare('VACUUM INTO ?').run(part);
    chmodSync(part, PRIVATE_FILE);
    flushFile(part);
    checkCopy(part, contentDigest(db));
    moveIntoPlace(part, copy);
  } finally {
    removeLeftover(part);
  }
  return copy;
}

/** Clears away copies that were cut short; called when the program starts. */
export function removeUnfinishedCopies(folder: string): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) {
    if (name.endsWith('.part')) removeLeftover(join(folder, name));
  }
}

function checkCopy(part: string, expectedDigest: string): void {
  const copy = connectForReading(part);
  try {
    const verdict = copy.pragma('integrity_check', { simple: true });
    const broken = copy.pragma('foreign_key_check');
    if (verdict !== 'ok' || !Array.isArray(broken) || broken.length > 0 || contentDigest(copy) !== expectedDigest) {
      throw Object.assign(new Error(`The copy ${part} does not match the workbook.`), { code: 'EIO' });
    }
  } finally {
    copy.close();
  }
}

function freeName(folder: string, name: string): string {
  for (let attempt = 1; ; attempt += 1) {
    const file = join(folder, `${name}${attempt === 1 ? '' : ` (${attempt})`}${WORKBOOK_ENDING}`);
    if (!existsSync(file)) return file;
  }
}
