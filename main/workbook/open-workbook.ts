import { accessSync, constants, realpathSync, statSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import type BetterSqlite3 from 'better-sqlite3';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { ReadOnlyReason } from '../../shared/contract/workbook.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { connectForReading, connectForWriting, makeSavesDurable } from './connect.ts';
import { kindOfMark, MARKS, WORKBOOK_ENDING } from './file-marks.ts';
import { liveWorkbook } from './live-workbook.ts';
import { type FileLook, judgeOpenFile, lookAtFile } from './look-at-file.ts';
import { lookingCopyOf, lookingFolderOf } from './looking-copy.ts';
import { latestVersion, type Migration, migrateFile, versionOf } from './migrations.ts';
import { openingTrouble, withSecondThoughts } from './opening-trouble.ts';
import { watchPlace } from './place-watch.ts';
import { riskyPlaceOf } from './risky-place.ts';
import { makeSafetyCopy } from './safety-copy.ts';
import { codeOf } from './save-trouble.ts';
import { hasWholeSchema } from './schema-check.ts';
import { storedValue } from './tables/setting-table.ts';
import type { Workbook } from './workbook.ts';

export interface OpenSetting {
  readonly migrations: readonly Migration[];
  /** Where copies go that are made before a file is changed to a newer format. */
  readonly safetyFolder: string;
  readonly now: () => string;
  /** Milliseconds between two looks at a file that seemed damaged; a failed read looks the same at first. */
  readonly damagePause?: number;
}

/** Opens a workbook in the order that keeps it safe: look, lock, check again, copy, migrate, make saves durable. */
export function openWorkbookFile(file: string, setting: OpenSetting): Result<Workbook, Refusal> {
  try {
    return withSecondThoughts(setting.damagePause, () => openOnce(file, setting));
  } catch (error) {
    return refuse(openingTrouble(error, file));
  }
}

/**
 * Shows a workbook that another program is writing in, as it was saved at this moment, without touching it or its lock.
 * Refused when this process has the file open itself: reading it past SQLite would drop its own lock.
 */
export function lookAtWorkbookFile(file: string, setting: OpenSetting): Result<Workbook, Refusal> {
  try {
    return withSecondThoughts(setting.damagePause, () => {
      const look = lookAtFile(file, latestVersion(setting.migrations));
      return look.ok ? openLookingCopy(realpathSync(file), setting, 'open-elsewhere') : look;
    });
  } catch (error) {
    return refuse(openingTrouble(error, file));
  }
}

function openOnce(file: string, setting: OpenSetting): Result<Workbook, Refusal> {
  const look = lookAtFile(file, latestVersion(setting.migrations));
  if (!look.ok) return look;
  // SQLite names the -wal after the file itself, not after a link to it.
  const place = realpathSync(file);
  const because = whyOnlyToRead(place, look.value);
  if (because === null) {
    if (!look.value.isInLogMode) readFirst(place);
    return openToWrite(place, setting);
  }
  return look.value.isInLogMode ? openLookingCopy(place, setting, because) : openToRead(place, setting, because);
}

/**
 * A damaged file says so to a connection that cannot write, before one that can removes the log lying beside it. A
 * journal that a power cut left must first be rolled back, which only the writer can.
 */
function readFirst(place: string): void {
  const db = connectForReading(place);
  try {
    db.prepare('SELECT count(*) FROM sqlite_schema').get();
  } catch (error) {
    if (codeOf(error) !== 'SQLITE_READONLY_ROLLBACK') throw error;
  } finally {
    db.close();
  }
}

function whyOnlyToRead(place: string, look: FileLook): ReadOnlyReason | null {
  if (look.isNewer) return 'newer';
  if (look.manyNames) return 'two-names';
  return isWritable(place) ? null : 'place';
}

function openToWrite(file: string, setting: OpenSetting): Result<Workbook, Refusal> {
  const uncleanEnd = hasUncleanEnd(file);
  return closedUnlessOk(connectForWriting(file), (db) => {
    const judged = judgeOpenFile(db, latestVersion(setting.migrations));
    if (!judged.ok) return judged;
    if (uncleanEnd) checkPages(db);
    bringUpToDate(db, setting);
    if (!hasWholeSchema(db)) return refuse({ kind: 'workbook-damaged', field: 'file', file });
    // Last, because it writes: a file that turns out damaged must keep its bytes.
    const workbook = living(db, file, setting, null);
    makeSavesDurable(db);
    // Opens the log while the file is still where it was looked for; what is read later needs no name any more.
    db.prepare('SELECT count(*) FROM setting').get();
    return ok(workbook);
  });
}

/**
 * The file can be looked at but not changed. Where even reading it would write beside it (a write-ahead log on a
 * read-only drive), or where it would have to be brought up to date first, a copy of it is looked at.
 */
function openToRead(file: string, setting: OpenSetting, because: ReadOnlyReason): Result<Workbook, Refusal> {
  try {
    return closedUnlessOk(connectForReading(file), (db) => {
      const version = versionOf(db);
      if (version < latestVersion(setting.migrations)) throw new NeedsACopy();
      if (!hasWholeSchema(db)) {
        if (because === 'newer') return refuse({ kind: 'workbook-newer', field: 'file', file, version });
        return refuse({ kind: 'workbook-damaged', field: 'file', file });
      }
      return ok(living(db, file, setting, because));
    });
  } catch (error) {
    if (!(error instanceof NeedsACopy) && !/^SQLITE_(CANTOPEN|READONLY)/.test(codeOf(error) ?? '')) throw error;
    return openLookingCopy(file, setting, error instanceof NeedsACopy ? 'older' : because);
  }
}

class NeedsACopy extends Error {}

/**
 * Opens a copy, made for looking only and gone when closed, of a file that no connection of ours holds. It is brought up
 * to date if need be; the file itself is read and nothing else. The workbook goes by the file's own name.
 */
export function openLookingCopy(
  file: string,
  setting: OpenSetting,
  because: ReadOnlyReason,
): Result<Workbook, Refusal> {
  const { migrations } = setting;
  const looking = lookingCopyOf(file, lookingFolderOf(setting.safetyFolder));
  try {
    const writing = connectForWriting(looking.file);
    try {
      const judged = judgeOpenFile(writing, latestVersion(migrations));
      if (!judged.ok && because !== 'newer') return looking.andGone(refuse({ ...judged.refusal, file }));
      // Copied past SQLite while someone else writes: the sizes and times looked steady, the pages must be so too.
      if (because === 'open-elsewhere') checkPages(writing);
      if (judged.ok) migrateFile(writing, migrations);
      writing.pragma('journal_mode = DELETE');
    } finally {
      writing.close();
    }
    const opened = closedUnlessOk(connectForReading(looking.file), (db) => {
      if (!hasWholeSchema(db)) return refuse({ kind: 'workbook-damaged', field: 'file', file } as const);
      return ok(living(db, file, setting, because, looking.remove));
    });
    return opened.ok ? opened : looking.andGone(opened);
  } catch (error) {
    looking.remove();
    throw error;
  }
}

function closedUnlessOk<Value>(
  db: BetterSqlite3.Database,
  work: (db: BetterSqlite3.Database) => Result<Value, Refusal>,
): Result<Value, Refusal> {
  let result: Result<Value, Refusal> | null = null;
  try {
    result = work(db);
    return result;
  } finally {
    if (result?.ok !== true) db.close();
  }
}

function bringUpToDate(db: BetterSqlite3.Database, { migrations, safetyFolder, now }: OpenSetting): void {
  const version = versionOf(db);
  if (version === latestVersion(migrations)) return;
  makeSafetyCopy(db, safetyFolder, 'before-format', now());
  migrateFile(db, migrations);
}

/** A clean close leaves neither a write-ahead log nor a rollback journal. */
function hasUncleanEnd(file: string): boolean {
  return ['-wal', '-journal'].some((ending) => (statSync(file + ending, { throwIfNoEntry: false })?.size ?? 0) > 0);
}

/** After a crash or power cut: are the pages of the file sound? Throws SQLITE_CORRUPT when not. */
function checkPages(db: BetterSqlite3.Database): void {
  const verdict = db.pragma('quick_check(1)', { simple: true });
  if (verdict !== 'ok') throw Object.assign(new Error(String(verdict)), { code: 'SQLITE_CORRUPT' });
}

function living(
  db: BetterSqlite3.Database,
  file: string,
  { now, safetyFolder }: OpenSetting,
  readOnlyBecause: ReadOnlyReason | null,
  afterClose: () => void = () => {},
): Workbook {
  const marks = db.prepare<[string], string>('SELECT value FROM setting WHERE key = ?').pluck();
  const mark = (key: string): unknown => storedValue(marks.get(key) ?? 'null');
  const name = mark(MARKS.name);
  return liveWorkbook(db, {
    name: typeof name === 'string' ? name : basename(file, WORKBOOK_ENDING),
    file,
    kind: kindOfMark(mark(MARKS.kind)),
    readOnlyBecause,
    safetyFolder,
    riskyPlace: readOnlyBecause === 'copy' ? null : riskyPlaceOf(file),
    now,
    afterClose,
    stillInPlace: watchPlace(file),
    reconnect: () => {
      if (readOnlyBecause !== null) return connectForReading(db.name);
      const again = connectForWriting(file);
      makeSavesDurable(again);
      return again;
    },
  });
}

function isWritable(file: string): boolean {
  try {
    accessSync(file, constants.R_OK | constants.W_OK);
    accessSync(dirname(file), constants.W_OK);
    return true;
  } catch {
    return false;
  }
}
