import { chmodSync, copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { PRIVATE_FILE, PRIVATE_FOLDER } from './durable-file.ts';

/** Copies made for looking lie beside the safety copies, in a folder of their own. */
export const lookingFolderOf = (safetyFolder: string): string => join(dirname(safetyFolder), 'looking');

/** Another program may be saving while we copy; so many times the copy is made again until nothing moved meanwhile. */
const STEADY_TRIES = 5;

/**
 * Copies a file, with the log that belongs to it, into a folder of its own. Only for files no connection of this
 * process is on: reading a file past SQLite drops the locks this process has on it. Throws SQLITE_BUSY where another
 * program keeps writing all the while.
 */
export function lookingCopyOf(file: string, folder: string) {
  mkdirSync(folder, { recursive: true, mode: PRIVATE_FOLDER });
  const own = mkdtempSync(join(folder, 'copy-'));
  const copy = join(own, basename(file));
  const remove = () => rmSync(own, { recursive: true, force: true });
  try {
    copySteadily(file, copy);
  } catch (error) {
    remove();
    throw error;
  }
  const andGone = <Value>(value: Value): Value => {
    remove();
    return value;
  };
  return { file: copy, remove, andGone };
}

/** The file and its log of one and the same moment: neither was written while both were copied. */
function copySteadily(file: string, copy: string): void {
  for (let tries = 0; tries < STEADY_TRIES; tries += 1) {
    const before = stateOf(file);
    for (const ending of ENDINGS) {
      rmSync(copy + ending, { force: true });
      copyIfThere(file + ending, copy + ending);
    }
    if (stateOf(file) === before) return;
  }
  throw Object.assign(new Error('Another program keeps writing in the file.'), { code: 'SQLITE_BUSY' });
}

const ENDINGS = ['', '-wal', '-journal'] as const;

/** Size and last writing of the file and what lies beside it. */
const stateOf = (file: string): string =>
  ENDINGS.map((ending) => {
    const stats = statSync(file + ending, { bigint: true, throwIfNoEntry: false });
    return stats ? `${stats.size}:${stats.mtimeNs}:${stats.ino}` : '-';
  }).join(' ');

/** A log may be gone between being seen and being copied; then the state has changed, and the copy is made again. */
function copyIfThere(from: string, to: string): void {
  if (!existsSync(from)) return;
  try {
    copyFileSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    return;
  }
  // A file that may only be read gives a copy that may only be read.
  chmodSync(to, PRIVATE_FILE);
}

/** Clears away what an interrupted look left behind; called when the program starts. */
export function removeLookingCopies(safetyFolder: string): void {
  const folder = lookingFolderOf(safetyFolder);
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true, force: true });
}
