import { chmodSync, copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { PRIVATE_FILE, PRIVATE_FOLDER } from './durable-file.ts';

/** Copies made for looking lie beside the safety copies, in a folder of their own. */
export const lookingFolderOf = (safetyFolder: string): string => join(dirname(safetyFolder), 'looking');

/**
 * Copies a file that nobody holds open, with the log that belongs to it, into a folder of its own. Only for files no
 * connection of this process is on: reading a file past SQLite drops the locks this process has on it.
 */
export function lookingCopyOf(file: string, folder: string) {
  mkdirSync(folder, { recursive: true, mode: PRIVATE_FOLDER });
  const own = mkdtempSync(join(folder, 'copy-'));
  const copy = join(own, basename(file));
  const remove = () => rmSync(own, { recursive: true, force: true });
  try {
    for (const ending of ['', '-wal', '-journal']) {
      if (ending !== '' && !existsSync(file + ending)) continue;
      copyFileSync(file + ending, copy + ending);
      // A file that may only be read gives a copy that may only be read.
      chmodSync(copy + ending, PRIVATE_FILE);
    }
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

/** Clears away what an interrupted look left behind; called when the program starts. */
export function removeLookingCopies(safetyFolder: string): void {
  const folder = lookingFolderOf(safetyFolder);
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true, force: true });
}
