import Database from 'better-sqlite3';
import { APPLICATION_ID, MARKS } from './file-marks.ts';
import { liveWorkbook } from './live-workbook.ts';
import { type Migration, migrate } from './migrations.ts';
import type { Workbook } from './workbook.ts';

export interface MemorySetting {
  readonly migrations: readonly Migration[];
  readonly name: string;
  readonly kind: Workbook['kind'];
  readonly now: () => string;
}

/** A workbook that is not on disk, with the real tables: for tests, and for what is built before it is shown. */
export function openMemoryWorkbook(migrations: readonly Migration[]): Workbook {
  return overMemory(new Database(':memory:'), {
    migrations,
    name: 'Memory',
    kind: 'real',
    now: () => '1970-01-01T00:00:00.000Z',
  });
}

/** Has a workbook built in memory and writes it to a file in one go; the file is not flushed yet. */
export function writeBuiltWorkbook(file: string, setting: MemorySetting, build: (workbook: Workbook) => void): void {
  const db = new Database(':memory:');
  try {
    build(overMemory(db, setting));
    db.prepare('VACUUM INTO ?').run(file);
  } finally {
    db.close();
  }
}

function overMemory(db: Database.Database, { migrations, name, kind, now }: MemorySetting): Workbook {
  db.pragma(`application_id = ${APPLICATION_ID}`);
  db.pragma('foreign_keys = ON');
  migrate(db, migrations);
  const put = db.prepare('INSERT INTO setting (key, value) VALUES (?, ?)');
  put.run(MARKS.name, JSON.stringify(name));
  put.run(MARKS.kind, JSON.stringify(kind));
  return liveWorkbook(db, {
    name,
    file: ':memory:',
    kind,
    readOnlyBecause: null,
    safetyFolder: null,
    riskyPlace: null,
    reconnect: () => {
      throw new Error('A workbook in memory cannot be opened again.');
    },
    stillInPlace: () => true,
    now,
  });
}
