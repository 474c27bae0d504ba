import { describe, expect, test } from 'vitest';
import { aBatch } from '../../../builders/batch.ts';
import { aDesk, fill } from '../../../builders/desk.ts';
import { aWatchedDesk } from '../../../builders/watched-workbook.ts';

function aDeskWithBatches() {
  const desk = aDesk();
  fill(desk, ({ batches }) => {
    batches.insert(aBatch({ id: 'a', code: '25-01', season: 2025, practice: true, closedOn: '2025-07-01' }));
    batches.insert(aBatch({ id: 'b', code: '26-01', season: 2026 }));
    batches.insert(aBatch({ id: 'c', code: '26-02', season: 2026, practice: true }));
  });
  return desk;
}

test('distinct gives each value once, smallest first, as the record has it', () => {
  const { batches } = aDeskWithBatches().workbook.tables;
  expect(batches.distinct('season')).toEqual([2025, 2026]);
  expect(batches.distinct('practice')).toEqual([false, true]);
  expect(aDesk().workbook.tables.batches.distinct('season')).toEqual([]);
});

describe('where', () => {
  test.each([
    { match: {}, found: ['a', 'b', 'c'] },
    { match: { season: 2026 }, found: ['b', 'c'] },
    { match: { closedOn: null }, found: ['b', 'c'] },
    { match: { practice: true }, found: ['a', 'c'] },
    { match: { practice: false, closedOn: null }, found: ['b'] },
    { match: { season: 1999 }, found: [] },
  ])('with $match finds $found, in the order they were written', ({ match, found }) => {
    expect(
      aDeskWithBatches()
        .workbook.tables.batches.where(match)
        .map(({ id }) => id),
    ).toEqual(found);
  });

  test('refuses a field that was left undefined, rather than matching every row', () => {
    const { batches } = aDesk().workbook.tables;
    expect(() => batches.where({ breederId: undefined })).toThrow('nothing to match in field breederId');
  });

  test('takes no SQL from a value', () => {
    expect(aDeskWithBatches().workbook.tables.batches.where({ code: "' OR 1=1 --" })).toEqual([]);
  });
});

test('a row that is not there can be neither updated nor removed', () => {
  expect(() => fill(aDesk(), ({ batches }) => batches.update(aBatch()))).toThrow('No batch with id batch-1 to update');
  expect(() => fill(aDesk(), ({ batches }) => batches.remove('batch-1'))).toThrow('No batch with id batch-1 to remove');
});

test('an update does not touch other rows', () => {
  const desk = aDeskWithBatches();
  const before = desk.workbook.tables.batches.where({ season: 2026 });
  fill(desk, ({ batches }) => batches.update(aBatch({ id: 'a', code: '25-01', season: 2025, note: 'changed' })));
  expect(desk.workbook.tables.batches.where({ season: 2026 })).toEqual(before);
});

test('an update writes the columns that differ and no other, and nothing where none does', () => {
  const { desk, db } = aWatchedDesk();
  fill(desk, ({ batches }) => batches.insert(aBatch({ practice: true })));
  db.exec(`CREATE TEMP TABLE written (what TEXT);
    CREATE TEMP TRIGGER note_written AFTER UPDATE OF note ON main.batch BEGIN INSERT INTO written VALUES ('note'); END;
    CREATE TEMP TRIGGER code_written AFTER UPDATE OF code ON main.batch BEGIN INSERT INTO written VALUES ('code'); END;
    CREATE TEMP TRIGGER row_written AFTER UPDATE ON main.batch BEGIN INSERT INTO written VALUES ('row'); END`);
  const written = () => db.prepare('SELECT what FROM written ORDER BY what').pluck().all();
  fill(desk, ({ batches }) => batches.update(aBatch({ practice: true })));
  expect(written()).toEqual([]);
  fill(desk, ({ batches }) => batches.update(aBatch({ practice: true, note: 'cold night' })));
  expect(written()).toEqual(['note', 'row']);
  expect(desk.workbook.tables.batches.get('batch-1')).toEqual(aBatch({ practice: true, note: 'cold night' }));
});
