import Database from 'better-sqlite3';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { APPLICATION_ID, MARKS } from './file-marks.ts';
import { versionOf } from './migrations.ts';
import { codeOf } from './save-trouble.ts';
import { tablesOf } from './tables/all-tables.ts';
import type { Tables } from './workbook.ts';

/** Why the bytes of a file are no workbook that can be read from. */
export type ExtractTrouble = 'not-a-workbook' | 'other-version' | 'damaged';

/**
 * A new workbook with the same tables as `db`, filled and given as the bytes of its file: a part of a workbook that
 * someone else can open by themselves. Nothing of it touches the disk.
 */
export function extractBytes(db: Database.Database, name: string, fill: (tables: Tables) => void): Uint8Array {
  const part = new Database(':memory:');
  try {
    for (const sql of schemaOf(db)) part.exec(sql);
    part.pragma(`application_id = ${APPLICATION_ID}`);
    part.pragma(`user_version = ${versionOf(db)}`);
    part.pragma('foreign_keys = ON');
    const tables = tablesOf(part, () => {});
    part.transaction(() => {
      tables.settings.put(MARKS.name, name);
      tables.settings.put(MARKS.kind, 'real');
      fill(tables);
    })();
    return part.serialize();
  } finally {
    part.close();
  }
}

/** Tables first, then what hangs on them. SQLite makes its own tables and indexes itself. */
const schemaOf = (db: Database.Database): readonly string[] =>
  db
    .prepare<[], string>(
      `SELECT sql FROM main.sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'
       ORDER BY type = 'table' DESC, rowid`,
    )
    .pluck()
    .all();

/**
 * Reads from the bytes of a workbook file that came from elsewhere, in memory: nothing in them is run, written or kept.
 * It must be of the same version and have the same tables.
 */
export function readExtract<Value>(
  db: Database.Database,
  bytes: Uint8Array,
  read: (tables: Tables) => Value,
): Result<Value, ExtractTrouble> {
  let other: Database.Database | null = null;
  try {
    other = new Database(Buffer.from(bytes), { readonly: true });
    other.pragma('trusted_schema = OFF');
    other.pragma('cell_size_check = ON');
    if (Number(other.pragma('application_id', { simple: true })) !== APPLICATION_ID) return refuse('not-a-workbook');
    if (versionOf(other) !== versionOf(db)) return refuse('other-version');
    if (other.pragma('integrity_check', { simple: true }) !== 'ok') return refuse('damaged');
    if (schemaOf(other).join() !== schemaOf(db).join()) return refuse('damaged');
    return ok(
      read(
        tablesOf(other, () => {
          throw new Error('Another workbook is only read from.');
        }),
      ),
    );
  } catch (error) {
    const code = codeOf(error);
    if (code === null) throw error;
    return refuse(code === 'SQLITE_NOTADB' ? 'not-a-workbook' : 'damaged');
  } finally {
    other?.close();
  }
}
