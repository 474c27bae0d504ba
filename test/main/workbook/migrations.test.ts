import { mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { connectForReading } from '../../../main/workbook/connect.ts';
import { APPLICATION_ID, MARKS } from '../../../main/workbook/file-marks.ts';
import { journalSteps, type Owner } from '../../../main/workbook/journal/journal-steps.ts';
import { type Migration, migrate, readMigrations, versionOf } from '../../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../../main/workbook/open-workbook.ts';
import { refuse } from '../../../shared/kernel/result.ts';
import { aBar, aBatch, aCount, anObservation, aStepDone } from '../../builders/batch.ts';
import { aColony, aColonyRole } from '../../builders/colony.ts';
import { MIGRATIONS_FOLDER, mustOk } from '../../builders/desk.ts';
import { aBox, aLook, aPlacement } from '../../builders/mating-box.ts';
import { aQueen } from '../../builders/queen.ts';
import { aFolder, anOpenSetting } from '../../builders/workbook-file.ts';
import { aYard } from '../../builders/yard.ts';

const ALL = readMigrations(MIGRATIONS_FOLDER);

describe('a workbook of the first format', () => {
  test('opens, and every row reads back unchanged', () => {
    const folder = aFolder();
    const file = aVersionOneFile(folder);
    const workbook = mustOk(openWorkbookFile(file, anOpenSetting(folder)));
    const { tables } = workbook;
    expect(tables.yards.all()).toEqual([aYard()]);
    expect(tables.colonies.all()).toEqual([aColony({ yardId: 'yard-1', name: 'Old hive' })]);
    expect(tables.colonyRoles.all()).toEqual([aColonyRole()]);
    expect(tables.batches.all()).toEqual([aBatch({ builderId: 'colony-1', practice: true, note: 'larvæ — “fine”' })]);
    expect(tables.bars.all()).toEqual([aBar()]);
    expect(tables.counts.all()).toEqual([aCount({ cells: 0 })]);
    expect(tables.stepsDone.all()).toEqual([aStepDone()]);
    expect(tables.observations.all()).toEqual([anObservation({ fromHours: 12.5 })]);
    expect(tables.boxes.all()).toEqual([aBox()]);
    expect(tables.placements.all()).toEqual([aPlacement({ barId: 'bar-1' })]);
    expect(tables.boxLooks.all()).toEqual([aLook({ strength: 3 })]);
    expect(tables.queens.all()).toEqual([aQueen({ placementId: 'placement-1', boxId: 'box-1' })]);
    expect(tables.tallies.all()).toEqual([]);
    workbook.close();
  });

  test('is copied before it is changed, and the copy still has the first format', () => {
    const folder = aFolder();
    const file = aVersionOneFile(folder);
    mustOk(openWorkbookFile(file, anOpenSetting(folder))).close();
    const copies = readdirSync(join(folder, 'safety-copies')).sort();
    const name = 'old 2026-06-01T180000 before-format.ripecell';
    expect(copies).toEqual([name, `${name}.json`]);
    const copy = connectForReading(join(folder, 'safety-copies', String(copies[0])));
    expect(versionOf(copy)).toBe(1);
    expect(copy.prepare('SELECT count(*) FROM batch').pluck().get()).toBe(1);
    copy.close();
    expect(statSync(join(folder, 'safety-copies', String(copies[0]))).mode & 0o777).toBe(0o600);
  });

  test('stays as it was when no copy of it can be made', () => {
    const folder = aFolder();
    const file = aVersionOneFile(folder);
    writeFileSync(join(folder, 'in-the-way'), '');
    const setting = anOpenSetting(folder, { safetyFolder: join(folder, 'in-the-way', 'below') });
    expect(openWorkbookFile(file, setting)).toEqual(
      refuse({ kind: 'drive-refused', field: 'file', file, reason: 'drive-error' }),
    );
    const db = connectForReading(file);
    expect(versionOf(db)).toBe(1);
    db.close();
  });

  test('is not copied again once it is up to date', () => {
    const folder = aFolder();
    const file = aVersionOneFile(folder);
    for (let time = 0; time < 3; time += 1) mustOk(openWorkbookFile(file, anOpenSetting(folder))).close();
    const copies = readdirSync(join(folder, 'safety-copies')).filter((name) => name.endsWith('.ripecell'));
    expect(copies).toHaveLength(1);
  });
});

describe('the journal of the eighth format', () => {
  const ROWS = [
    ['batch', 'batch-1', null, { id: 'batch-1', code: '26-01' }],
    ['count', 'count-1', null, { id: 'count-1', batch_id: 'batch-1', cells: 3 }],
    [
      'count',
      'count-1',
      { id: 'count-1', batch_id: 'batch-1', cells: 3 },
      { id: 'count-1', batch_id: 'batch-1', cells: 4 },
    ],
    ['mating_box', 'box-1', null, { id: 'box-1', code: 'K01' }],
    ['queen', 'queen-1', null, { id: 'queen-1', box_id: 'box-1', colony_id: null }],
    ['queen_move', 'move-1', null, { id: 'move-1', queen_id: 'queen-1', colony_id: 'colony-1' }],
    ['queen_move', 'move-1', { id: 'move-1', queen_id: 'queen-1', colony_id: 'colony-1' }, null],
    ['colony', 'colony-1', null, { id: 'colony-1', code: 'H01' }],
  ] as const;

  function brought() {
    const db = new Database(':memory:');
    migrate(db, ALL.slice(0, 8));
    db.exec(
      `INSERT INTO journal_step (id, at, kind, words) VALUES (1, '2026-06-01T18:00:00.000Z', 'change', '{"did":"other"}')`,
    );
    const insert = db.prepare(
      'INSERT INTO journal_change (step_id, table_name, row_id, place, old, new) VALUES (1, ?, ?, 7, ?, ?)',
    );
    const text = (row: object | null) => (row === null ? null : JSON.stringify(row));
    for (const [table, id, old, fresh] of ROWS) insert.run(table, id, text(old), text(fresh));
    migrate(db, ALL);
    return db;
  }

  test('keeps every change in its order, with its old and new values', () => {
    const db = brought();
    const kept = db
      .prepare<[], { t: string; id: string; o: string; n: string }>(
        'SELECT table_name AS t, row_id AS id, old AS o, new AS n FROM journal_change WHERE place = 7 ORDER BY journal_change.id',
      )
      .all();
    expect(kept.map(({ t, id, o, n }) => [t, id, JSON.parse(o), JSON.parse(n)])).toEqual(ROWS);
    db.close();
  });

  test('is found by the record a row is, or belongs to, and by what is gone', () => {
    const db = brought();
    const journal = journalSteps(db);
    const found = (column: Owner['column'], id: string) => journal.changesOf({ column, id }).map(({ rowId }) => rowId);
    expect(found('batch_id', 'batch-1')).toEqual(['count-1', 'count-1', 'batch-1']);
    expect(found('box_id', 'box-1')).toEqual(['queen-1', 'box-1']);
    expect(found('queen_id', 'queen-1')).toEqual(['move-1', 'move-1', 'queen-1']);
    expect(found('colony_id', 'colony-1')).toEqual(['colony-1', 'move-1', 'move-1']);
    expect(journal.lastRow('queen_move', 'move-1')).toMatchObject({ queen_id: 'queen-1' });
    db.close();
  });

  test('is still only added to, and holds no change without its step', () => {
    const db = brought();
    db.pragma('foreign_keys = ON');
    expect(() => db.exec('DELETE FROM journal_change')).toThrow('the journal is only added to');
    expect(() => db.exec('UPDATE journal_change SET place = 8')).toThrow('the journal is only added to');
    expect(() =>
      db.exec("INSERT INTO journal_change (step_id, table_name, row_id, place) VALUES (2, 'yard', 'y', 1)"),
    ).toThrow('FOREIGN KEY');
    db.close();
  });
});

test.each(ALL.map(({ number, name, sql }) => ({ number, name, sql })))(
  'migration $number ($name) is all or nothing at each of its statements',
  ({ number, sql }) => {
    const statements = sql()
      .split(/;\s*\n/)
      .filter((part) => part.replaceAll(/--.*$/gm, '').trim() !== '');
    for (let whole = 0; whole < statements.length; whole += 1) {
      const db = new Database(':memory:');
      migrate(db, ALL.slice(0, number - 1));
      const before = schemaOf(db);
      const cut: Migration = {
        number,
        name: 'cut',
        sql: () => `${statements.slice(0, whole).join(';\n')};\nSELECT broken here;`,
      };
      expect(() => migrate(db, [...ALL.slice(0, number - 1), cut])).toThrow();
      expect(versionOf(db)).toBe(number - 1);
      expect(schemaOf(db)).toEqual(before);
      db.close();
    }
  },
);

test('a folder with a gap in its numbers is refused', () => {
  const folder = join(aFolder(), 'migrations');
  mkdirSync(folder);
  writeFileSync(join(folder, '0001_one.sql'), '');
  writeFileSync(join(folder, '0003_three.sql'), '');
  expect(() => readMigrations(folder)).toThrow('Migration 2 is missing');
});

const schemaOf = (db: Database.Database) => db.prepare('SELECT type, name, sql FROM sqlite_schema ORDER BY name').all();

/** A file as the first format wrote it, with a row in each of its tables. */
function aVersionOneFile(folder: string): string {
  const file = join(folder, 'old.ripecell');
  const db = new Database(file);
  db.pragma(`application_id = ${APPLICATION_ID}`);
  migrate(db, ALL.slice(0, 1));
  db.exec(`
    INSERT INTO setting VALUES ('${MARKS.name}', '"Old"');
    INSERT INTO yard VALUES ('yard-1', 'Orchard', NULL);
    INSERT INTO colony VALUES ('colony-1', 'H01', 'Old hive', 'yard-1', NULL, NULL, NULL, NULL);
    INSERT INTO colony_role VALUES ('role-1', 'colony-1', 2026, 'builder');
    INSERT INTO batch VALUES ('batch-1', '26-01', 2026, 'larva-grafting', NULL, NULL, 'queenless', NULL, 'colony-1',
      'give-larvae', '2026-05-20', NULL, NULL, 20, 1, 'larvæ — “fine”', NULL, NULL);
    INSERT INTO bar VALUES ('bar-1', 'batch-1', 1);
    INSERT INTO "count" VALUES ('count-1', 'batch-1', 'bar-1', 'given', 0, '2026-05-20');
    INSERT INTO step_done VALUES ('done-1', 'batch-1', 'give-larvae', '2026-05-20', NULL);
    INSERT INTO observation VALUES ('observation-1', 'batch-1', 'cells-sealed', '2026-05-25', 12.5, NULL, NULL);
    INSERT INTO mating_box VALUES ('box-1', 'K01', NULL, NULL, 0, 'mini', NULL, NULL);
    INSERT INTO placement VALUES ('placement-1', 'box-1', 'batch-1', 'bar-1', '2026-05-30', NULL, NULL);
    INSERT INTO box_look VALUES ('look-1', 'box-1', 'placement-1', '2026-06-13', 'laying', 3, NULL, NULL);
    INSERT INTO queen VALUES ('queen-1', '26-001', 2026, 'placement-1', NULL, NULL, NULL, NULL, NULL, NULL, 'in-box',
      'box-1', NULL, NULL, NULL);`);
  db.close();
  return file;
}
