import { statSync } from 'node:fs';

/**
 * Tells whether the file under a name is still the one that was opened. A program that renames another copy over an
 * open workbook (a sync client, a restore) would otherwise let every later save go into a file without a name.
 * `stat` opens nothing, so it cannot drop SQLite's locks.
 */
export function watchPlace(file: string): () => boolean {
  const opened = identityOf(file);
  return () => opened !== null && identityOf(file) === opened;
}

function identityOf(file: string): string | null {
  const stats = statSync(file, { bigint: true, throwIfNoEntry: false });
  return stats === undefined ? null : `${stats.dev}:${stats.ino}`;
}
