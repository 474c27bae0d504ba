import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { reckonHere } from '../../../../main/engine/yield/reckon.ts';
import { removeObservation } from '../../../../main/operations/batches/remove-observation.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { addBoxes } from '../../../../main/operations/boxes/add-boxes.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { columnsOf, dataTables } from '../../../../main/workbook/journal/journal-triggers.ts';
import { openWorkbookFile } from '../../../../main/workbook/open-workbook.ts';
import { dayOfIso } from '../../../../shared/kernel/day.ts';
import { ok, refuse } from '../../../../shared/kernel/result.ts';
import { aBar, aBatch, anObservation } from '../../../builders/batch.ts';
import { countedIds, fill, mustOk } from '../../../builders/desk.ts';
import { aStart } from '../../../builders/running-batch.ts';
import { aWatchedDesk, dataDigest } from '../../../builders/watched-workbook.ts';
import { aFolder, anOpenSetting, aWorkbookFile } from '../../../builders/workbook-file.ts';
import { aYard } from '../../../builders/yard.ts';

const boxes = { ids: ['b1', 'b2'], codes: 'K01-K02', yardId: null, row: null, boxType: 'mini' } as const;
const anAddBoxes = () => ({ ...boxes, ids: [...boxes.ids] });

describe('the journal', () => {
  test('watches every table of the file for rows added, changed and removed', () => {
    const { db } = aWatchedDesk();
    const triggers = db
      .prepare<[], { name: string; tbl_name: string }>('SELECT name, tbl_name FROM sqlite_temp_schema')
      .all();
    const tables = db
      .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT IN ('journal_step', 'journal_change')")
      .pluck()
      .all() as string[];
    expect(tables.length).toBeGreaterThan(17);
    // What went out to a calendar cannot be taken back; test/main/operations/files/export-calendar.test.ts.
    for (const table of tables.filter((name) => name !== 'calendar_export')) {
      const events = triggers.filter(({ tbl_name }) => tbl_name === table).map(({ name }) => name.split('_')[1]);
      expect(events.toSorted(), table).toEqual(['DELETE', 'INSERT', 'UPDATE']);
    }
  });

  test('says whose a changed row is now, and whose a removed row was', () => {
    const { desk, db } = aWatchedDesk();
    fill(desk, ({ batches, bars }) => {
      batches.insert(aBatch({ id: 'first', code: '26-01' }));
      batches.insert(aBatch({ id: 'second', code: '26-02' }));
      bars.insert(aBar({ id: 'bar', batchId: 'first' }));
    });
    fill(desk, ({ bars }) => bars.update(aBar({ id: 'bar', batchId: 'second' })));
    fill(desk, ({ bars }) => bars.remove('bar'));
    const owners = db.prepare("SELECT batch_id FROM journal_change WHERE row_id = 'bar' ORDER BY id").pluck().all();
    expect(owners).toEqual(['first', 'second', 'second']);
    expect(db.prepare("SELECT batch_id FROM journal_change WHERE row_id = 'second'").pluck().all()).toEqual(['second']);
  });

  test('keeps every column of every table, whatever is in it', () => {
    const { db } = aWatchedDesk();
    db.pragma('foreign_keys = OFF');
    // Rules between the columns of a row are not what is looked at here.
    db.pragma('ignore_check_constraints = ON');
    for (const table of dataTables(db)) {
      const columns = columnsOf(db, table);
      const types = db.prepare<[string], string>('SELECT type FROM pragma_table_info(?)').pluck().all(table);
      const values = columns.map((column, index) => {
        if (types[index] === 'REAL') return 12.5;
        if (types[index] === 'INTEGER') return ['season', 'born_in'].includes(column) ? 2026 : 1;
        if (column.endsWith('_on') || ['moved_to', 'day'].includes(column)) return '2026-05-04';
        return ['changes', 'value'].includes(column) ? '["“ä”"]' : `a "${column}" — ä`;
      });
      db.exec('BEGIN');
      db.prepare(`INSERT INTO "${table}" VALUES (${values.map(() => '?').join(', ')})`).run(...values);
      const kept = db
        .prepare<[string], string>('SELECT new FROM journal_change WHERE table_name = ?')
        .pluck()
        .get(table);
      db.exec('ROLLBACK');
      expect(JSON.parse(kept ?? 'null'), table).toEqual(
        Object.fromEntries(columns.map((column, index) => [column, values[index]])),
      );
    }
  });

  test('is only ever added to', () => {
    const { desk, db } = aWatchedDesk();
    mustOk(saveYard(desk, aYard()));
    for (const table of ['journal_step', 'journal_change']) {
      expect(() => db.exec(`UPDATE ${table} SET id = id + 1`)).toThrow('the journal is only added to');
      expect(() => db.exec(`DELETE FROM ${table}`)).toThrow('the journal is only added to');
    }
    const before = db.prepare('SELECT * FROM journal_change').all();
    mustOk(desk.workbook.undo());
    mustOk(desk.workbook.redo());
    expect(db.prepare('SELECT * FROM journal_change').all().slice(0, before.length)).toEqual(before);
  });

  test('keeps no row without a step: what is written past the program fails at the end of its transaction', () => {
    const { db } = aWatchedDesk();
    expect(() => db.exec("INSERT INTO yard VALUES ('y', 'Heath', NULL)")).toThrow('FOREIGN KEY');
    expect(db.prepare('SELECT count(*) FROM yard').pluck().get()).toBe(0);
  });

  test('has no step for what was refused, nor for what changed nothing', () => {
    const { desk } = aWatchedDesk();
    mustOk(saveYard(desk, aYard()));
    mustOk(saveYard(desk, aYard()));
    expect(saveYard(desk, aYard({ id: 'other' })).ok).toBe(false);
    desk.workbook.change({ did: 'other' }, () => ok(null));
    expect(desk.workbook.journal.steps(null, 10).map(({ words }) => words)).toEqual([
      { did: 'save-yard', yard: aYard().name },
    ]);
  });
});

describe('undo', () => {
  test('takes a whole form back at once and leaves the rows of others', () => {
    const { desk, db } = aWatchedDesk();
    mustOk(addBoxes(desk, anAddBoxes()));
    const before = dataDigest(db);
    mustOk(startBatch(desk, aStart()));
    expect(mustOk(desk.workbook.undo()).words).toEqual({ did: 'start-batch', batch: '26-01' });
    expect(dataDigest(db)).toBe(before);
    expect(desk.workbook.tables.colonies.all()).toEqual([]);
  });

  test('brings a removed row back under its own id and in its own place', () => {
    const { desk } = aWatchedDesk();
    mustOk(startBatch(desk, aStart()));
    const seen = ['s1', 's2', 's3'].map((id) => anObservation({ id, batchId: 'batch-1' }));
    fill(desk, ({ observations }) => seen.forEach(observations.insert));
    mustOk(removeObservation(desk, { batchId: 'batch-1', observationId: 's2' }));
    mustOk(desk.workbook.undo());
    expect(desk.workbook.tables.observations.where({ batchId: 'batch-1' })).toEqual(seen);
  });

  test('does not mind in which order rows were written that point to each other', () => {
    const { desk, db } = aWatchedDesk();
    mustOk(startBatch(desk, aStart()));
    const before = dataDigest(db);
    db.exec(`BEGIN; PRAGMA defer_foreign_keys = ON;
      INSERT INTO hive_look VALUES ('look', 'new', '2026-05-01', 3, 3, '');
      INSERT INTO colony VALUES ('new', 'H77', NULL, NULL, NULL, NULL, NULL, NULL);
      INSERT INTO journal_step (at, kind, words) VALUES ('2026-06-01T18:00:00.000Z', 'change', '{"did":"other"}');
      COMMIT`);
    mustOk(desk.workbook.undo());
    expect(dataDigest(db)).toBe(before);
    mustOk(desk.workbook.redo());
    expect(desk.workbook.tables.hiveLooks.get('look')).toMatchObject({ colonyId: 'new' });
  });

  test('survives closing and opening', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    const desk = {
      workbook,
      today: dayOfIso('2026-06-01'),
      ids: countedIds(),
      reckon: reckonHere(),
      computerLanguage: 'en' as const,
    };
    mustOk(addBoxes(desk, anAddBoxes()));
    mustOk(startBatch(desk, aStart()));
    mustOk(workbook.undo());
    workbook.close();
    const again = mustOk(openWorkbookFile(workbook.file, anOpenSetting(folder)));
    expect(again.journal.toRedo()?.words).toEqual({ did: 'start-batch', batch: '26-01' });
    expect(mustOk(again.undo()).words).toEqual({ did: 'add-boxes', boxes: 'K01-K02' });
    expect(again.tables.boxes.all()).toEqual([]);
    again.close();
  });

  test('and redo say when there is nothing left, and a new change ends the redo line', () => {
    const { desk } = aWatchedDesk();
    expect(desk.workbook.undo()).toEqual(refuse({ kind: 'nothing-to-undo' }));
    mustOk(saveYard(desk, aYard()));
    expect(desk.workbook.redo()).toEqual(refuse({ kind: 'nothing-to-redo' }));
    mustOk(desk.workbook.undo());
    mustOk(addBoxes(desk, anAddBoxes()));
    expect(desk.workbook.redo()).toEqual(refuse({ kind: 'nothing-to-redo' }));
    mustOk(desk.workbook.undo());
    expect(desk.workbook.undo()).toEqual(refuse({ kind: 'nothing-to-undo' }));
  });

  test('does not reach behind the telling of the made-up yard', () => {
    const { desk } = aWatchedDesk();
    mustOk(saveYard(desk, aYard()));
    mustOk(desk.workbook.change({ did: 'build-demo' }, ({ settings }) => ok(settings.put('heldAt', '2026-05-01'))));
    expect(desk.workbook.undo()).toEqual(refuse({ kind: 'nothing-to-undo' }));
    mustOk(saveYard(desk, aYard({ id: 'y2', name: 'Heath' })));
    mustOk(desk.workbook.undo());
    expect(desk.workbook.tables.yards.all()).toEqual([aYard()]);
  });
});

describe('rows that something else has changed since', () => {
  const CHANGED = refuse({ kind: 'changed-since', way: 'undo', words: { did: 'start-batch', batch: '26-01' } });

  /** A workbook with a started batch, written to by another program while it was closed. */
  function aMeddledWorkbook(sql: string) {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    mustOk(
      startBatch(
        {
          workbook,
          today: dayOfIso('2026-06-01'),
          ids: countedIds(),
          reckon: reckonHere(),
          computerLanguage: 'en' as const,
        },
        aStart(),
      ),
    );
    workbook.close();
    const db = new Database(workbook.file);
    db.pragma('foreign_keys = ON');
    db.exec(sql);
    db.close();
    return mustOk(openWorkbookFile(workbook.file, anOpenSetting(folder)));
  }

  test.each([
    ['a value was changed', "UPDATE batch SET note = 'by hand'"],
    ['a row was removed', 'DELETE FROM batch_tally; DELETE FROM bar'],
    [
      'another row points to one that would go',
      "INSERT INTO hive_look VALUES ('x', 'h12', '2026-05-01', NULL, NULL, '')",
    ],
  ])('%s: nothing is undone, and nothing is touched', (_what, sql) => {
    const workbook = aMeddledWorkbook(sql);
    const { batches, hiveLooks } = workbook.tables;
    const before = [batches.all(), hiveLooks.all(), workbook.journal.steps(null, 10)];
    expect(workbook.undo()).toEqual(CHANGED);
    expect([batches.all(), hiveLooks.all(), workbook.journal.steps(null, 10)]).toEqual(before);
    workbook.close();
  });

  test('a number taken meanwhile: nothing is done again', () => {
    const folder = aFolder();
    const workbook = aWorkbookFile(folder);
    mustOk(
      saveYard(
        {
          workbook,
          today: dayOfIso('2026-06-01'),
          ids: countedIds(),
          reckon: reckonHere(),
          computerLanguage: 'en' as const,
        },
        aYard({ name: 'Orchard' }),
      ),
    );
    mustOk(workbook.undo());
    workbook.close();
    const db = new Database(workbook.file);
    db.exec("INSERT INTO yard VALUES ('by-hand', 'Orchard', NULL)");
    db.close();
    const again = mustOk(openWorkbookFile(workbook.file, anOpenSetting(folder)));
    const words = { did: 'save-yard', yard: 'Orchard' } as const;
    expect(again.redo()).toEqual(refuse({ kind: 'changed-since', way: 'redo', words }));
    again.close();
  });
});

test('a column that was added after the step is left as it is', () => {
  const { desk, db } = aWatchedDesk();
  mustOk(saveYard(desk, aYard()));
  mustOk(saveYard(desk, aYard({ name: 'Heath' })));
  db.exec("ALTER TABLE yard ADD COLUMN later TEXT NOT NULL DEFAULT 'kept'");
  mustOk(desk.workbook.undo());
  expect(db.prepare('SELECT name, later FROM yard').get()).toEqual({ name: aYard().name, later: 'kept' });
});
