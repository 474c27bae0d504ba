import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { liveWorkbook } from '../../../main/workbook/live-workbook.ts';
import { migrate, readMigrations } from '../../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../../main/workbook/open-workbook.ts';
import { ok, refuse } from '../../../shared/kernel/result.ts';
import { aBatch } from '../../builders/batch.ts';
import { aDesk, fill, MIGRATIONS_FOLDER, mustOk } from '../../builders/desk.ts';
import { aBox, aPlacement } from '../../builders/mating-box.ts';
import { aFolder, anOpenSetting, aWorkbookFile } from '../../builders/workbook-file.ts';
import { aYard } from '../../builders/yard.ts';

describe('a change of the workbook', () => {
  test('is kept whole when it is ok', () => {
    const { workbook } = aDesk();
    const saved = workbook.change({ did: 'other' }, (tables) => {
      tables.yards.insert(aYard({ id: 'a', name: 'A' }));
      tables.yards.insert(aYard({ id: 'b', name: 'B' }));
      return ok('saved');
    });
    expect(saved).toEqual(ok('saved'));
    expect(workbook.tables.yards.all()).toHaveLength(2);
  });

  test('leaves nothing behind when it is refused half way', () => {
    const { workbook } = aDesk();
    const refused = workbook.change({ did: 'other' }, (tables) => {
      tables.yards.insert(aYard());
      return refuse({ kind: 'batch-not-found' });
    });
    expect(refused).toEqual(refuse({ kind: 'batch-not-found' }));
    expect(workbook.tables.yards.all()).toEqual([]);
    expect(workbook.savedAt).toBeNull();
  });

  test('leaves nothing behind when it throws, and the next change works', () => {
    const desk = aDesk();
    const throwing = () =>
      desk.workbook.change({ did: 'other' }, (tables) => {
        tables.yards.insert(aYard());
        throw new Error('our own mistake');
      });
    expect(throwing).toThrow('our own mistake');
    expect(desk.workbook.tables.yards.all()).toEqual([]);
    fill(desk, ({ yards }) => yards.insert(aYard()));
    expect(desk.workbook.tables.yards.all()).toHaveLength(1);
  });

  test('is the only place where rows can be written', () => {
    const { workbook } = aDesk();
    expect(() => workbook.tables.yards.insert(aYard())).toThrow('outside a change');
    expect(() => workbook.tables.settings.put('theme', 'dark')).toThrow('outside a change');
    workbook.change({ did: 'other' }, () => ok(null));
    expect(() => workbook.tables.yards.insert(aYard())).toThrow('outside a change');
  });

  test('that comes after closing, from something still at work, is refused and opens nothing again', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    workbook.close();
    expect(workbook.change({ did: 'other' }, () => ok(null))).toEqual(refuse({ kind: 'no-workbook-open' }));
    mustOk(openWorkbookFile(workbook.file, anOpenSetting(folder))).close();
  });

  test('cannot stand inside another', () => {
    const { workbook } = aDesk();
    const nested = () => workbook.change({ did: 'other' }, () => workbook.change({ did: 'other' }, () => ok(null)));
    expect(nested).toThrow('A change inside a change');
  });
});

describe('the file itself refuses', () => {
  test('a second open placement in one box', () => {
    const desk = aDesk();
    fill(desk, ({ boxes, batches, placements }) => {
      boxes.insert(aBox());
      batches.insert(aBatch());
      placements.insert(aPlacement({ endedOn: '2026-06-01', endReason: 'failed' }));
      placements.insert(aPlacement({ id: 'placement-2' }));
    });
    expect(() => fill(desk, ({ placements }) => placements.insert(aPlacement({ id: 'placement-3' })))).toThrow(
      'UNIQUE',
    );
  });

  test('a row that points to nothing, and the removal of a row that others point to', () => {
    const desk = aDesk();
    expect(() => fill(desk, ({ placements }) => placements.insert(aPlacement()))).toThrow('FOREIGN KEY');
    fill(desk, ({ boxes, batches, placements }) => {
      boxes.insert(aBox());
      batches.insert(aBatch());
      placements.insert(aPlacement());
    });
    expect(() => fill(desk, ({ boxes }) => boxes.remove('box-1'))).toThrow('FOREIGN KEY');
  });
});

/** A connection whose next COMMIT fails as a drive does, before or after the rows have reached the file. */
function aFailingCommit(db: Database.Database, when: 'before' | 'after', code: string): void {
  const exec = db.exec.bind(db);
  let armed = true;
  db.exec = (sql) => {
    if (sql !== 'COMMIT' || !armed) return exec(sql);
    armed = false;
    if (when === 'after') exec(sql);
    throw Object.assign(new Error('simulated'), { code });
  };
}

describe('a drive error at the end of a save', () => {
  test.each([
    { when: 'after', saved: true },
    { when: 'before', saved: false },
  ] as const)('is looked into: rows written $when the error are reported as saved: $saved', ({ when, saved }) => {
    const folder = aFolder();
    const file = aWorkbookFile(folder);
    file.close();
    const open = () => new Database(file.file);
    const db = open();
    const workbook = liveWorkbook(db, { ...FACTS, file: file.file, reconnect: open });
    mustOk(workbook.change({ did: 'other' }, () => ok(null)));
    aFailingCommit(db, when, 'SQLITE_IOERR_FSYNC');
    const result = workbook.change({ did: 'other' }, ({ yards }) => {
      yards.insert(aYard());
      return ok('saved');
    });
    expect(result).toEqual(saved ? ok('saved') : refuse({ kind: 'not-saved', reason: 'drive-error' }));
    expect(workbook.tables.yards.all()).toHaveLength(saved ? 1 : 0);
    mustOk(workbook.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard({ id: 'b', name: 'Heath' })))));
    workbook.close();
  });

  test('says "not saved" while the file cannot be opened again, and goes on once it can', () => {
    const folder = aFolder();
    const file = aWorkbookFile(folder);
    file.close();
    let driveIsBack = false;
    const reconnect = () => {
      if (!driveIsBack) throw Object.assign(new Error('simulated'), { code: 'SQLITE_CANTOPEN' });
      return new Database(file.file);
    };
    const db = new Database(file.file);
    const workbook = liveWorkbook(db, { ...FACTS, file: file.file, reconnect });
    aFailingCommit(db, 'before', 'SQLITE_IOERR_WRITE');
    const addYard = () => workbook.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard())));
    expect(addYard()).toEqual(refuse({ kind: 'not-saved', reason: 'drive-error' }));
    expect(addYard()).toEqual(refuse({ kind: 'not-saved', reason: 'drive-error' }));
    driveIsBack = true;
    expect(addYard().ok).toBe(true);
    workbook.close();
    const again = mustOk(openWorkbookFile(file.file, anOpenSetting(folder)));
    expect(again.tables.yards.all()).toEqual([aYard()]);
    again.close();
  });

  test.each([
    ['SQLITE_FULL', 'disk-full'],
    ['SQLITE_READONLY_DBMOVED', 'read-only'],
    ['SQLITE_IOERR_WRITE', 'drive-error'],
  ] as const)('%s comes back as "%s" and leaves no transaction open', (code, reason) => {
    const db = new Database(':memory:');
    migrate(db, readMigrations(MIGRATIONS_FOLDER));
    const workbook = liveWorkbook(db, FACTS);
    const failing = workbook.change({ did: 'other' }, () => {
      throw Object.assign(new Error('simulated'), { code });
    });
    expect(failing).toEqual(refuse({ kind: 'not-saved', reason }));
    expect(db.inTransaction).toBe(false);
    workbook.close();
  });
});

const FACTS = {
  name: 'Test',
  file: ':memory:',
  kind: 'real',
  readOnlyBecause: null,
  safetyFolder: null,
  riskyPlace: null,
  stillInPlace: () => true,
  now: () => '2026-06-01T18:00:00.000Z',
  reconnect: () => {
    throw new Error('not needed');
  },
} as const;

test('what is read after a drive error is read from the file, once it can be opened again', () => {
  const folder = aFolder();
  const file = aWorkbookFile(folder);
  file.close();
  const db = new Database(file.file);
  const workbook = liveWorkbook(db, { ...FACTS, file: file.file, reconnect: () => new Database(file.file) });
  mustOk(workbook.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard()))));
  db.close();
  expect(workbook.tables.yards.all()).toEqual([aYard()]);
  expect(workbook.changeNumber).toBe(1);
  workbook.close();
});

test('no copy is made of a file whose drive does not answer, and that is said', () => {
  const folder = aFolder();
  const file = aWorkbookFile(folder);
  file.close();
  const db = new Database(file.file);
  const reconnect = () => {
    throw Object.assign(new Error('simulated'), { code: 'SQLITE_CANTOPEN' });
  };
  const workbook = liveWorkbook(db, { ...FACTS, file: file.file, safetyFolder: folder, reconnect });
  db.close();
  const notMade = refuse({ kind: 'copy-not-made', reason: 'drive-error' });
  expect([workbook.keepCopy('by-hand'), workbook.saveAs(`${file.file}.copy`)]).toEqual([notMade, notMade]);
});

test('closing lets go of the file whatever the drive says', () => {
  const folder = aFolder();
  const file = aWorkbookFile(folder);
  file.close();
  const db = new Database(file.file);
  const workbook = liveWorkbook(db, { ...FACTS, file: file.file });
  // What a failed flush was seen to leave behind (strace, fsync EIO at the second call).
  db.pragma = () => {
    throw Object.assign(new Error('database table is locked'), { code: 'SQLITE_LOCKED' });
  };
  workbook.close();
  expect(db.open).toBe(false);
});
