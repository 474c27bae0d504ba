import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  copyFileSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  symlinkSync,
  truncateSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test, vi } from 'vitest';
import { APPLICATION_ID } from '../../../main/workbook/file-marks.ts';
import { migrate, readMigrations } from '../../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../../main/workbook/open-workbook.ts';
import type { Workbook } from '../../../main/workbook/workbook.ts';
import { ok, refuse } from '../../../shared/kernel/result.ts';
import { MIGRATIONS_FOLDER, mustOk } from '../../builders/desk.ts';
import { aFolder, anOpenSetting, aWorkbookFile } from '../../builders/workbook-file.ts';
import { aYard } from '../../builders/yard.ts';

const sha256 = (file: string) => createHash('sha256').update(readFileSync(file)).digest('hex');

const addYard = (workbook: Workbook, name: string) =>
  workbook.change({ did: 'other' }, (tables) => {
    tables.yards.insert(aYard({ id: `yard-${name}`, name }));
    return ok(null);
  });

describe('opening a workbook', () => {
  test('what was saved is there when the file is opened again', () => {
    const folder = aFolder();
    const first = aWorkbookFile(folder);
    mustOk(addYard(first, 'Orchard'));
    first.close();
    const again = mustOk(openWorkbookFile(first.file, anOpenSetting(folder)));
    expect(again.tables.yards.all()).toEqual([aYard({ id: 'yard-Orchard', name: 'Orchard' })]);
    expect(again).toMatchObject({ name: 'Season', kind: 'real', readOnly: false, savedAt: '2026-06-01T18:00:00.000Z' });
    again.close();
  });

  test('every save is flushed to the drive, also after the file was closed and opened again', () => {
    const folder = aFolder();
    aWorkbookFile(folder).close();
    const pragma = vi.spyOn(Database.prototype, 'pragma');
    const again = mustOk(openWorkbookFile(join(folder, 'season.ripecell'), anOpenSetting(folder)));
    const connection = (pragma.mock.contexts as Database.Database[]).findLast((db) => db.open && !db.readonly);
    pragma.mockRestore();
    // 2 = FULL (SQLite documentation, PRAGMA synchronous).
    expect(connection?.pragma('synchronous', { simple: true })).toBe(2);
    expect(connection?.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(connection?.pragma('foreign_keys', { simple: true })).toBe(1);
    expect(connection?.pragma('trusted_schema', { simple: true })).toBe(0);
    again.close();
  });

  test('without our own setting a reopened file would not be flushed at each save (control)', () => {
    const folder = aFolder();
    for (const expected of [2, 1]) {
      const db = new Database(join(folder, 'control.sqlite'));
      db.pragma('journal_mode = WAL');
      expect(db.pragma('synchronous', { simple: true })).toBe(expected);
      db.close();
    }
  });

  test('a clean close leaves one plain file that a read-only drive can show', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    mustOk(addYard(workbook, 'Orchard'));
    workbook.close();
    expect(readdirSync(folder)).toEqual(['season.ripecell']);
    // Bytes 18 and 19 of an SQLite file are 1 in rollback-journal mode and 2 in write-ahead-log mode (SQLite file format, 1.3).
    expect([...readFileSync(workbook.file).subarray(18, 20)]).toEqual([1, 1]);
  });

  test('only the owner may read the file', { skip: process.platform === 'win32' }, () => {
    expect(statSync(aWorkbookFile(aFolder()).file).mode & 0o777).toBe(0o600);
  });

  test('a workbook that is open cannot be opened a second time', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    expect(openWorkbookFile(workbook.file, anOpenSetting(folder))).toEqual(
      refuse({ kind: 'workbook-open-elsewhere', field: 'file', file: workbook.file }),
    );
  });

  test('another process cannot open it, and can once this one has closed it', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    expect(openInAnotherProcess(workbook.file, folder)).toBe('workbook-open-elsewhere');
    workbook.close();
    expect(openInAnotherProcess(workbook.file, folder)).toBe('opened');
  });

  test('a link to the workbook opens the workbook itself', { skip: process.platform === 'win32' }, () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    workbook.close();
    symlinkSync(workbook.file, join(folder, 'link.ripecell'));
    const linked = mustOk(openWorkbookFile(join(folder, 'link.ripecell'), anOpenSetting(folder)));
    expect(linked.file).toBe(workbook.file);
    linked.close();
  });

  test('a file with two names is shown but not written to', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    workbook.close();
    linkSync(workbook.file, join(folder, 'second-name.ripecell'));
    const opened = mustOk(openWorkbookFile(workbook.file, anOpenSetting(folder)));
    expect(opened.readOnly).toBe(true);
    expect(addYard(opened, 'Orchard')).toEqual(refuse({ kind: 'not-saved', reason: 'read-only' }));
    opened.close();
  });
});

describe('a file that cannot be opened is left as it is', () => {
  test('a missing file is said to be missing and is not made', () => {
    const folder = aFolder();
    const file = join(folder, 'gone.ripecell');
    expect(openWorkbookFile(file, anOpenSetting(folder))).toEqual(
      refuse({ kind: 'file-not-found', field: 'file', file }),
    );
    expect(readdirSync(folder)).toEqual([]);
  });

  test.each(NOT_WORKBOOKS())('$what is not a workbook, and not a byte of it changes', ({ make }) => {
    const folder = aFolder();
    const file = join(folder, 'foreign.ripecell');
    make(file);
    const before = statSync(file).isFile() ? sha256(file) : null;
    expect(openWorkbookFile(file, anOpenSetting(folder))).toEqual(
      refuse({ kind: 'not-a-workbook', field: 'file', file }),
    );
    if (before !== null) expect(sha256(file)).toBe(before);
  });

  test.each([1, 2, 1000])('a workbook %i versions newer is shown, takes no saves and keeps its bytes', (ahead) => {
    const folder = aFolder();
    const file = join(folder, 'newer.ripecell');
    const db = aWorkbookOf(file);
    db.exec("INSERT INTO yard VALUES ('a', 'Orchard', NULL)");
    db.exec('ALTER TABLE yard ADD COLUMN soil TEXT; CREATE TABLE harvest (id TEXT)');
    db.pragma(`user_version = ${readMigrations(MIGRATIONS_FOLDER).length + ahead}`);
    db.close();
    const before = sha256(file);
    const opened = mustOk(openWorkbookFile(file, anOpenSetting(folder)));
    expect(opened).toMatchObject({ readOnly: true, readOnlyBecause: 'newer' });
    expect(opened.tables.yards.all()).toEqual([aYard({ id: 'a', name: 'Orchard' })]);
    expect(addYard(opened, 'Heath')).toEqual(refuse({ kind: 'not-saved', reason: 'read-only' }));
    opened.close();
    expect(sha256(file)).toBe(before);
    expect(readdirSync(folder)).toEqual(['newer.ripecell']);
  });

  test.each([1, 2, 1000])('a workbook %i versions newer without what we would show is refused', (ahead) => {
    const folder = aFolder();
    const file = join(folder, 'newer.ripecell');
    const version = readMigrations(MIGRATIONS_FOLDER).length + ahead;
    const db = aWorkbookOf(file);
    db.exec('DROP TABLE queen');
    db.pragma(`user_version = ${version}`);
    db.close();
    const before = sha256(file);
    expect(openWorkbookFile(file, anOpenSetting(folder))).toEqual(
      refuse({ kind: 'workbook-newer', field: 'file', file, version }),
    );
    expect(sha256(file)).toBe(before);
  });

  test('a truncated workbook is called damaged and left alone', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    workbook.close();
    truncateSync(workbook.file, 8192);
    const before = sha256(workbook.file);
    expect(openWorkbookFile(workbook.file, anOpenSetting(folder))).toEqual(
      refuse({ kind: 'workbook-damaged', field: 'file', file: workbook.file }),
    );
    expect(sha256(workbook.file)).toBe(before);
  });
});

test.each([
  ['a table', 'DROP TABLE queen'],
  ['a column', 'ALTER TABLE batch DROP COLUMN lesson'],
])('a workbook that lost %s is called damaged and left alone', (_what, sql) => {
  const folder = aFolder();
  const file = join(folder, 'lost.ripecell');
  const db = aWorkbookOf(file);
  db.exec(sql);
  db.close();
  const before = sha256(file);
  expect(openWorkbookFile(file, anOpenSetting(folder))).toEqual(
    refuse({ kind: 'workbook-damaged', field: 'file', file }),
  );
  expect(sha256(file)).toBe(before);
});

test('a workbook whose header names an older version than its tables are of is called damaged and left alone', () => {
  const folder = aFolder();
  const file = join(folder, 'header.ripecell');
  aWorkbookOf(file).close();
  const { migrations } = anOpenSetting(folder);
  for (let version = 1; version < migrations.length; version += 1) {
    const db = new Database(file);
    db.pragma(`user_version = ${version}`);
    db.close();
    const before = sha256(file);
    expect(openWorkbookFile(file, anOpenSetting(folder)), `version ${version}`).toEqual(
      refuse({ kind: 'workbook-damaged', field: 'file', file }),
    );
    expect(sha256(file), `version ${version}`).toBe(before);
  }
});

describe('a file that is replaced while it is open', () => {
  test('takes no more saves, and the file that took its place keeps its bytes', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    mustOk(addYard(workbook, 'Orchard'));
    writeFileSync(join(folder, 'other'), 'another copy from a sync program');
    renameSync(join(folder, 'other'), workbook.file);
    expect(addYard(workbook, 'Heath')).toEqual(refuse({ kind: 'not-saved', reason: 'file-replaced' }));
    expect(readFileSync(workbook.file, 'utf8')).toBe('another copy from a sync program');
  });

  test.each([
    { what: 'deleted', act: (file: string) => unlinkSync(file) },
    { what: 'moved away', act: (file: string) => renameSync(file, `${file}.moved`) },
  ])('a file that was $what takes no more saves', { skip: process.platform === 'win32' }, ({ act }) => {
    const workbook = aWorkbookFile(aFolder());
    act(workbook.file);
    expect(addYard(workbook, 'Heath')).toEqual(refuse({ kind: 'not-saved', reason: 'file-replaced' }));
    expect(workbook.tables.yards.all()).toEqual([]);
  });
});

test('the SQLite inside is past the release that mended its write-ahead log', () => {
  // Fault of 3.7.0 to 3.51.2 mended in 3.51.3 (SQLite release notes, 2026).
  const db = new Database(':memory:');
  const parts = String(db.prepare('SELECT sqlite_version()').pluck().get()).split('.').map(Number);
  db.close();
  const [major = 0, minor = 0, patch = 0] = parts;
  expect(major * 1_000_000 + minor * 1000 + patch).toBeGreaterThanOrEqual(3_051_003);
});

function aWorkbookOf(file: string): Database.Database {
  const db = new Database(file);
  db.pragma(`application_id = ${APPLICATION_ID}`);
  migrate(db, readMigrations(MIGRATIONS_FOLDER));
  return db;
}

function openInAnotherProcess(file: string, folder: string): string {
  const script = `
    import { openWorkbookFile } from ${JSON.stringify(new URL('../../../main/workbook/open-workbook.ts', import.meta.url).href)};
    import { readMigrations } from ${JSON.stringify(new URL('../../../main/workbook/migrations.ts', import.meta.url).href)};
    const opened = openWorkbookFile(${JSON.stringify(file)}, {
      migrations: readMigrations(${JSON.stringify(MIGRATIONS_FOLDER)}), safetyFolder: ${JSON.stringify(folder)}, now: () => '',
    });
    process.stdout.write(opened.ok ? 'opened' : opened.refusal.kind);
    if (opened.ok) opened.value.close();`;
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' });
  return stdout === '' ? stderr : stdout;
}

function NOT_WORKBOOKS(): readonly { readonly what: string; readonly make: (file: string) => void }[] {
  const bytes = (what: string, content: string | Buffer) => ({
    what,
    make: (file: string) => writeFileSync(file, content),
  });
  const header = Buffer.from('SQLite format 3\0');
  const sqlite = (what: string, set: (db: Database.Database) => void) => ({
    what,
    make: (file: string) => {
      const db = new Database(file);
      set(db);
      db.close();
    },
  });
  return [
    bytes('an empty file', ''),
    bytes('one byte', 'x'),
    bytes('one line of text', 'season 2026\n'),
    bytes('a long text', 'bees and honey\n'.repeat(5000)),
    bytes('a table as text', 'batch;given;taken\n26-01;20;17\n'),
    bytes('a JSON file', '{"batches": []}'),
    bytes('a page of zeros', Buffer.alloc(4096)),
    bytes('a page of noise', Buffer.from(Array.from({ length: 4096 }, (_, i) => (i * 7919) % 251))),
    bytes('a picture', Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex')),
    bytes('a zip archive', Buffer.from('504b030414000000080000002100', 'hex')),
    bytes('a PDF', '%PDF-1.7\n%\u00e2\u00e3\n1 0 obj\n'),
    bytes('the first 16 bytes of an SQLite file', header),
    bytes('an SQLite header with text behind it', Buffer.concat([header, Buffer.from('honey '.repeat(900))])),
    bytes('a file of another program under our ending', Buffer.concat([Buffer.from('RIFF'), Buffer.alloc(600, 1)])),
    sqlite('an SQLite file of another program', (db) => db.exec('CREATE TABLE note (text)')),
    sqlite('an SQLite file with another application id and a version we know', (db) => {
      db.pragma('application_id = 252006');
      db.pragma('user_version = 2');
      db.exec('CREATE TABLE batch (id)');
    }),
    sqlite('an SQLite file in write-ahead-log mode', (db) => {
      db.pragma('journal_mode = WAL');
      db.exec('CREATE TABLE batch (id)');
    }),
    sqlite('an SQLite file with our id but no version', (db) => db.pragma(`application_id = ${APPLICATION_ID}`)),
    sqlite('an SQLite file with many tables', (db) => {
      for (let i = 0; i < 40; i += 1) db.exec(`CREATE TABLE t${i} (a, b, c)`);
    }),
    { what: 'a folder', make: (file: string) => mkdirSync(file) },
  ];
}

test('a workbook copied by hand while closed opens as that workbook', () => {
  const folder = aFolder();
  const workbook = aWorkbookFile(folder);
  mustOk(addYard(workbook, 'Orchard'));
  workbook.close();
  copyFileSync(workbook.file, join(folder, 'copy.ripecell'));
  const copy = mustOk(openWorkbookFile(join(folder, 'copy.ripecell'), anOpenSetting(folder)));
  expect(copy.tables.yards.all()).toHaveLength(1);
  copy.close();
});

describe('a file left with a rollback journal by a power cut', () => {
  /** Cuts a transaction off after part of it has reached the file, so that the journal is needed to read it. */
  function cutOff(file: string, prepare: (db: Database.Database) => void): string {
    const db = new Database(file);
    prepare(db);
    db.exec('CREATE TABLE filler (text)');
    db.pragma('cache_size = 1');
    db.exec('BEGIN');
    const insert = db.prepare('INSERT INTO filler VALUES (?)');
    for (let row = 0; row < 2000; row += 1) insert.run('x'.repeat(200));
    const cut = `${file}.cut`;
    copyFileSync(file, cut);
    copyFileSync(`${file}-journal`, `${cut}-journal`);
    db.exec('ROLLBACK');
    db.close();
    return cut;
  }

  test('is rolled back and opens, if it is a workbook', () => {
    const folder = aFolder();
    const cut = cutOff(join(folder, 'w.ripecell'), (db) => {
      db.pragma(`application_id = ${APPLICATION_ID}`);
      migrate(db, readMigrations(MIGRATIONS_FOLDER));
      db.exec("INSERT INTO yard VALUES ('a', 'Orchard', NULL)");
    });
    const opened = mustOk(openWorkbookFile(cut, anOpenSetting(folder)));
    expect(opened.tables.yards.all()).toEqual([aYard({ id: 'a', name: 'Orchard' })]);
    opened.close();
  });

  test('keeps its bytes and its journal, if it is something else', () => {
    const folder = aFolder();
    const cut = cutOff(join(folder, 'other.sqlite'), (db) => db.exec('CREATE TABLE batch (id)'));
    const before = [sha256(cut), sha256(`${cut}-journal`)];
    expect(openWorkbookFile(cut, anOpenSetting(folder))).toEqual(
      refuse({ kind: 'not-a-workbook', field: 'file', file: cut }),
    );
    expect([sha256(cut), sha256(`${cut}-journal`)]).toEqual(before);
  });
});
