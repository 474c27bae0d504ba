import { createHash } from 'node:crypto';
import type BetterSqlite3 from 'better-sqlite3';
import { MARKS } from './file-marks.ts';

/**
 * SHA-256 over every row of every table, in an order that does not depend on where SQLite keeps them. SQLite's own
 * integrity check does not notice a changed value; this does. Every table's first column is its key. Left out is the count
 * of changes, which also moves when nothing was written.
 */
export function contentDigest(db: BetterSqlite3.Database): string {
  const hash = createHash('sha256');
  for (const table of tableNames(db)) {
    hash.update(`\n${table}\n`);
    const rows = table === 'setting' ? `setting WHERE key <> '${MARKS.lastChange}'` : `"${table}"`;
    for (const row of db.prepare(`SELECT * FROM ${rows} ORDER BY 1`).raw().iterate())
      hash.update(`${JSON.stringify(row)}\n`);
  }
  return hash.digest('hex');
}

export function tableNames(db: BetterSqlite3.Database): readonly string[] {
  return db
    .prepare<[], string>(
      "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY name",
    )
    .pluck()
    .all();
}
