import { chmodSync, copyFileSync, existsSync, readFileSync, renameSync, unlinkSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { z } from 'zod';
import { flushFile, flushFolder, moveIntoPlace, PRIVATE_FILE, removeLeftover, replaceFile } from './durable-file.ts';
import { WORKBOOK_ENDING } from './file-marks.ts';
import { freeName } from './safety-copy.ts';

/** Written down before any file is renamed, so that a restore cut short is finished at the next start. */
const UnderWay = z.object({ file: z.string(), kept: z.string(), fresh: z.string() });
type UnderWay = z.infer<typeof UnderWay>;

const noteOf = (programData: string): string => join(programData, 'restore-under-way.json');

/** Files that belong to a workbook that was not closed cleanly; they must never come to lie beside another file. */
const COMPANIONS = ['-wal', '-journal'] as const;

/**
 * Puts a finished copy where the workbook lies. What lies there now is renamed, never written over, and its -wal goes
 * with it; nobody may hold it open. Returns the name under which it is kept, or null when there was none.
 */
export function putInPlace(copy: string, file: string, programData: string, now: string): string | null {
  const fresh = `${file}.new`;
  const kept = freeName(
    dirname(file),
    `${basename(file, WORKBOOK_ENDING)} until ${now.slice(0, 19).replaceAll(':', '')}`,
  );
  const isThere = existsSync(file);
  try {
    removeLeftover(fresh);
    copyFileSync(copy, fresh);
    chmodSync(fresh, PRIVATE_FILE);
    flushFile(fresh);
    replaceFile(noteOf(programData), `${JSON.stringify({ file, kept, fresh } satisfies UnderWay)}\n`);
  } catch (error) {
    removeLeftover(fresh);
    throw error;
  }
  swap({ file, kept, fresh });
  unlinkSync(noteOf(programData));
  return isThere ? kept : null;
}

/** Called when the program starts: a restore that was cut short between two names is carried to its end. */
export function finishRestore(programData: string): void {
  const note = noteOf(programData);
  if (!existsSync(note)) return;
  const underWay = underWayIn(note);
  if (underWay !== null) swap(underWay);
  unlinkSync(note);
}

/** While the fresh file has its own name, whatever lies under the workbook's name is still the old one. */
function swap({ file, kept, fresh }: UnderWay): void {
  if (!existsSync(fresh)) return;
  for (const ending of ['', ...COMPANIONS]) {
    if (existsSync(file + ending)) renameSync(file + ending, kept + ending);
  }
  flushFolder(dirname(file));
  moveIntoPlace(fresh, file);
}

function underWayIn(note: string): UnderWay | null {
  try {
    return UnderWay.parse(JSON.parse(readFileSync(note, 'utf8')));
  } catch {
    return null;
  }
}
