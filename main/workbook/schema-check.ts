import Database from 'better-sqlite3';
import { type Migration, migrate } from './migrations.ts';

/** False when a table or column that every workbook has is missing. Whatever someone has added does no harm. */
export function hasWholeSchema(db: Database.Database, migrations: readonly Migration[]): boolean {
  const fresh = new Database(':memory:');
  try {
    migrate(fresh, migrations);
    const there = new Set(columnNames(db));
    return columnNames(fresh).every((column) => there.has(column));
  } finally {
    fresh.close();
  }
}

function columnNames(db: Database.Database): readonly string[] {
  return db
    .prepare<[], string>(
      `SELECT t.name || '.' || c.name FROM pragma_table_list AS t JOIN pragma_table_info(t.name) AS c
       WHERE t.schema = 'main' AND t.type = 'table'`,
    )
    .pluck()
    .all();
}
