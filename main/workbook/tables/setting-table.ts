import type BetterSqlite3 from 'better-sqlite3';
import type { SettingTable } from '../workbook.ts';
import type { WriteGuard } from './define-table.ts';

/** A value that damage has made unreadable counts as not set; the thorough look at the file is what finds it. */
export function storedValue(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** Small values by key, kept as JSON. A key that is not there reads as null. */
export function settingTable(db: BetterSqlite3.Database, guardWrite: WriteGuard): SettingTable {
  const one = db.prepare<[string], { readonly value: string }>('SELECT value FROM setting WHERE key = ?');
  const every = db.prepare<[], { readonly key: string; readonly value: string }>(
    'SELECT key, value FROM setting ORDER BY key',
  );
  const put = db.prepare<[string, string]>(
    'INSERT INTO setting (key, value) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value',
  );
  return {
    get(key) {
      const row = one.get(key);
      return row === undefined ? null : storedValue(row.value);
    },
    put(key, value) {
      guardWrite();
      put.run(key, JSON.stringify(value));
    },
    all: () => Object.fromEntries(every.all().map(({ key, value }) => [key, storedValue(value)])),
  };
}
