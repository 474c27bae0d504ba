import { identityOf } from './connect.ts';

/**
 * Tells whether the file under a name is still the one that was opened. A program that renames another copy over an
 * open workbook (a sync client, a restore) would otherwise let every later save go into a file without a name.
 * `stat` opens nothing, so it cannot drop SQLite's locks.
 */
export function watchPlace(file: string): () => boolean {
  const opened = identityOf(file);
  return () => opened !== null && identityOf(file) === opened;
}
