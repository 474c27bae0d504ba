import Database from 'better-sqlite3';
import { APPLICATION_ID } from './file-marks.ts';
import { liveWorkbook } from './live-workbook.ts';
import { type Migration, migrate } from './migrations.ts';
import type { Workbook } from './workbook.ts';

/** A workbook that is never on disk, with the real tables: for tests, and for trying a change out. */
export function openMemoryWorkbook(migrations: readonly Migration[]): Workbook {
  const db = new Database(':memory:');
  db.pragma(`application_id = ${APPLICATION_ID}`);
  db.pragma('foreign_keys = ON');
  migrate(db, migrations);
  return liveWorkbook(db, {
    name: 'Memory',
    file: ':memory:',
    kind: 'real',
    readOnly: false,
    reconnect: () => {
      throw new Error('A workbook in memory cannot be opened again.');
    },
    stillInPlace: () => true,
    now: () => '1970-01-01T00:00:00.000Z',
  });
}
