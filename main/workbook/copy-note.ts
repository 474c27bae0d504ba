import { createHash } from 'node:crypto';
import { readFileSync, statSync } from 'node:fs';
import type BetterSqlite3 from 'better-sqlite3';
import { z } from 'zod';
import { CopyCounts, CopyPurpose } from '../../shared/contract/copies.ts';
import { replaceFile } from './durable-file.ts';

/** What is written down about a safety copy, in a small text file beside it. */
export const CopyNote = z.object({
  /** Name of the workbook, and where it lay. */
  name: z.string(),
  file: z.string(),
  at: z.iso.datetime(),
  purpose: CopyPurpose,
  /** Number of the last change in the copy, and its format. */
  changeNumber: z.int().nonnegative(),
  /** Instant of that change; with its number it tells one state of the workbook from every other. */
  changedAt: z.string().nullable(),
  /** The last step of its journal; null where it has none, or no journal yet. */
  lastStep: z.object({ id: z.int(), at: z.string() }).nullable(),
  version: z.int().positive(),
  counts: CopyCounts,
  /** Over all rows, as contentDigest reckons it. */
  digest: z.string(),
  /** Over the bytes of the file. */
  sha256: z.string(),
  bytes: z.int().positive(),
});
export type CopyNote = z.infer<typeof CopyNote>;

export const noteFileOf = (copy: string): string => `${copy}.json`;

export function writeNote(copy: string, note: CopyNote): void {
  replaceFile(noteFileOf(copy), `${JSON.stringify(note, null, 2)}\n`);
}

/** null where the note is missing or cannot be read. */
export function readNote(copy: string): CopyNote | null {
  try {
    const parsed = CopyNote.safeParse(JSON.parse(readFileSync(noteFileOf(copy), 'utf8')));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

/** Never for a workbook that is open: reading it past SQLite would drop its lock. */
export function sha256Of(copy: string): Pick<CopyNote, 'sha256' | 'bytes'> {
  return { sha256: createHash('sha256').update(readFileSync(copy)).digest('hex'), bytes: statSync(copy).size };
}

/** Records of each kind in an open file of any format. */
export function countsOf(db: BetterSqlite3.Database): CopyCounts {
  const there = new Set(db.prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all());
  const count = (...tables: readonly string[]): number | null => {
    if (!tables.every((table) => there.has(table))) return null;
    return tables.reduce((sum, table) => sum + Number(db.prepare(`SELECT count(*) FROM "${table}"`).pluck().get()), 0);
  };
  return {
    hives: count('colony'),
    batches: count('batch'),
    looks: count('box_look', 'hive_look'),
    queens: count('queen'),
  };
}
