import { createHash } from 'node:crypto';
import Database from 'better-sqlite3';
import { reckonHere } from '../../main/engine/yield/reckon.ts';
import type { Desk } from '../../main/operations/operation.ts';
import { MARKS } from '../../main/workbook/file-marks.ts';
import { dataTables } from '../../main/workbook/journal/journal-triggers.ts';
import { liveWorkbook } from '../../main/workbook/live-workbook.ts';
import { migrate, readMigrations } from '../../main/workbook/migrations.ts';
import { dayOfIso } from '../../shared/kernel/day.ts';
import { countedIds, MIGRATIONS_FOLDER } from './desk.ts';

/** A desk over a workbook in memory whose rows the test can also see past the program. */
export function aWatchedDesk(): { readonly desk: Desk; readonly db: Database.Database } {
  const db = new Database(':memory:');
  db.pragma('foreign_keys = ON');
  migrate(db, readMigrations(MIGRATIONS_FOLDER));
  let seconds = 0;
  const workbook = liveWorkbook(db, {
    name: 'Watched',
    file: ':memory:',
    kind: 'real',
    readOnlyBecause: null,
    safetyFolder: null,
    riskyPlace: null,
    stillInPlace: () => true,
    now: () => {
      seconds += 1;
      return new Date(Date.UTC(2026, 5, 1, 18, 0, seconds)).toISOString();
    },
    reconnect: () => {
      throw new Error('not needed');
    },
  });
  return {
    desk: { workbook, today: dayOfIso('2026-06-20'), ids: countedIds(), reckon: reckonHere(), computerLanguage: 'en' },
    db,
  };
}

/** SHA-256 over every row a person's typing has made, in its place; the journal and the marks of the file left out. */
export function dataDigest(db: Database.Database): string {
  const hash = createHash('sha256');
  const marks: readonly unknown[] = Object.values(MARKS);
  for (const table of dataTables(db)) {
    hash.update(`\n${table}\n`);
    for (const row of db.prepare<[], unknown[]>(`SELECT rowid, * FROM "${table}" ORDER BY 2`).raw().iterate())
      if (table !== 'setting' || !marks.includes(row[1])) hash.update(`${JSON.stringify(row)}\n`);
  }
  return hash.digest('hex');
}
