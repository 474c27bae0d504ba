import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type BetterSqlite3 from 'better-sqlite3';
import { codeOf } from './save-trouble.ts';

/** One numbered step of the file's format. Its number is the user_version of a file that has it. */
export interface Migration {
  readonly number: number;
  readonly name: string;
  readonly sql: () => string;
}

const MIGRATION_FILE = /^(\d{4})_(.+)\.sql$/;

/**
 * All migrations in order; what they do is read when they are carried out. Throws when a number is missing: a file must
 * never skip one.
 */
export function readMigrations(folder: string): readonly Migration[] {
  const migrations = readdirSync(folder)
    .sort()
    .flatMap((file) => {
      const parts = MIGRATION_FILE.exec(file);
      if (parts?.[1] === undefined || parts[2] === undefined) return [];
      const sql = () => readFileSync(join(folder, file), 'utf8');
      return [{ number: Number(parts[1]), name: parts[2], sql }];
    });
  for (const [index, migration] of migrations.entries()) {
    if (migration.number !== index + 1) throw new Error(`Migration ${index + 1} is missing in ${folder}.`);
  }
  if (migrations.length === 0) throw new Error(`No migrations in ${folder}.`);
  return migrations;
}

/** The version of a file that has every migration. */
export const latestVersion = (migrations: readonly Migration[]): number => migrations.length;

export const versionOf = (db: BetterSqlite3.Database): number => Number(db.pragma('user_version', { simple: true }));

/** Brings a file up to date: one transaction that also sets user_version, so it is old or new and nothing between. */
export function migrate(db: BetterSqlite3.Database, migrations: readonly Migration[]): void {
  const missing = migrations.slice(versionOf(db));
  if (missing.length === 0) return;
  db.transaction(() => {
    for (const { number, sql } of missing) {
      db.exec(sql());
      db.pragma(`user_version = ${number}`);
    }
  }).immediate();
}

/**
 * The same for a file that somebody has. Its version is one number in the header: where the tables are not those of that
 * version, the number is damaged, and so it is said. Throws SQLITE_CORRUPT then, and nothing was changed.
 */
export function migrateFile(db: BetterSqlite3.Database, migrations: readonly Migration[]): void {
  try {
    migrate(db, migrations);
  } catch (error) {
    if (codeOf(error) !== 'SQLITE_ERROR') throw error;
    throw Object.assign(new Error('The tables are not those of the version.', { cause: error }), {
      code: 'SQLITE_CORRUPT',
    });
  }
}
