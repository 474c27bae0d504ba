import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, unlinkSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Only the owner may read what the person typed. */
export const PRIVATE_FILE = 0o600;
export const PRIVATE_FOLDER = 0o700;

/** Makes sure that what was written to a closed file is on the drive. Never for a workbook that is open. */
export function flushFile(file: string): void {
  // Windows flushes only handles that may write.
  const handle = openSync(file, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Makes sure that new and renamed entries of a folder are on the drive. Windows has no such call and needs none. */
export function flushFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Moves a finished file to its name, old or new but never half. */
export function moveIntoPlace(from: string, to: string): void {
  renameSync(from, to);
  flushFolder(dirname(to));
}

export function replaceFile(file: string, text: string): void {
  mkdirSync(dirname(file), { recursive: true, mode: PRIVATE_FOLDER });
  const part = `${file}.part`;
  writeFileSync(part, text, { mode: PRIVATE_FILE });
  flushFile(part);
  moveIntoPlace(part, file);
}

/** Removes what an interrupted write of an SQLite file can leave behind. */
export function removeLeftover(file: string): void {
  for (const leftover of [file, `${file}-journal`, `${file}-wal`]) {
    if (existsSync(leftover)) unlinkSync(leftover);
  }
}
