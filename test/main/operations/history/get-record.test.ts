import { expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { recordObservation } from '../../../../main/operations/batches/record-observation.ts';
import { removeObservation } from '../../../../main/operations/batches/remove-observation.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { getRecord } from '../../../../main/operations/history/get-record.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { anObservation } from '../../../builders/batch.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, aRow } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

const aTypedLook = {
  id: 'look-1',
  boxId: 'box-1',
  lookedOn: '2026-06-02',
  result: 'virgin',
  strength: 4,
  food: null,
  note: null,
  queen: null,
} as const;

test('a corrected look of a box stands with its old and its new value', () => {
  const desk = aDeskWithBoxes('2026-06-02');
  mustOk(recordLook(desk, aTypedLook));
  mustOk(recordLook(desk, { ...aTypedLook, result: 'laying', food: 2 }));
  const [corrected, first] = getRecord(desk, { record: 'box', id: 'box-1' });
  expect(corrected?.step.words).toEqual({ did: 'record-look', box: 'K01', result: 'laying', queen: null });
  expect(corrected?.rows).toMatchObject([
    {
      table: 'box_look',
      what: 'changed',
      about: [{ field: 'looked_on', value: '2026-06-02' }],
      fields: [
        { field: 'result', old: 'virgin', new: 'laying' },
        { field: 'food', old: null, new: 2 },
      ],
    },
  ]);
  expect(first?.rows).toMatchObject([{ what: 'added' }]);
  // On the page of the box its own code says nothing; the day stands in front.
  expect(first?.rows[0]?.fields.map(({ field, new: value }) => [field, value])).toEqual([
    ['placement_id', '26-01'],
    ['result', 'virgin'],
    ['strength', 4],
  ]);
  expect(getRecord(desk, { record: 'box', id: 'box-2' }).map(({ step }) => step.words.did)).toEqual([
    'place-cells',
    'add-boxes',
  ]);
});

test('a batch has the changes of its bars, counts and sightings, called by their names, without its kept sums', () => {
  const desk = aDeskWithBoxes('2026-06-02');
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 10, sealed: 8 })));
  const [count, ...older] = getRecord(desk, { record: 'batch', id: 'batch-1' });
  expect(count?.rows).toMatchObject([
    {
      table: 'count',
      what: 'changed',
      about: [
        { field: 'bar_id', value: 1 },
        { field: 'stage', value: 'taken' },
      ],
      fields: [{ field: 'cells', old: 9, new: 10 }],
    },
  ]);
  expect(older.at(-1)?.step.words).toEqual({ did: 'start-batch', batch: '26-01' });
  const batch = older.at(-1)?.rows.find(({ table }) => table === 'batch');
  expect(batch?.fields).toContainEqual({ field: 'builder_id', old: null, new: 'H12' });
  // As they were written: the batch before its bar.
  expect(older.at(-1)?.rows.map(({ table }) => table)).toEqual(['batch', 'bar']);
  const all = [count, ...older].flatMap((one) => one?.rows ?? []);
  expect(all.map(({ table }) => table)).not.toContain('batch_tally');
});

test('a removed row is still told of, and an undo is a step like any other', () => {
  const desk = aDeskWithBoxes('2026-06-02');
  const observation = anObservation({ id: 's1', batchId: 'batch-1', what: 'cells-sealed', seenOn: '2026-05-09' });
  mustOk(recordObservation(desk, observation));
  mustOk(removeObservation(desk, { batchId: 'batch-1', observationId: 's1' }));
  mustOk(undo(desk));
  const told = getRecord(desk, { record: 'batch', id: 'batch-1' }).slice(0, 3);
  expect(told.map(({ step, rows }) => [step.kind, rows[0]?.what])).toEqual([
    ['undo', 'added'],
    ['change', 'removed'],
    ['change', 'added'],
  ]);
  expect(told[1]?.step).toMatchObject({ undone: true, words: { did: 'remove-observation', what: 'cells-sealed' } });
});

test('a yard is called by the name it has now, or had last', () => {
  const desk = aDesk();
  mustOk(saveYard(desk, aYard({ id: 'y1', name: 'Orchard' })));
  mustOk(saveHive(desk, aColony({ id: 'h1', yardId: 'y1' })));
  mustOk(saveYard(desk, aYard({ id: 'y1', name: 'Heath' })));
  const yardOf = () =>
    getRecord(desk, { record: 'hive', id: 'h1' })
      .at(-1)
      ?.rows[0]?.fields.find(({ field }) => field === 'yard_id')?.new;
  expect(yardOf()).toBe('Heath');
  for (let steps = 0; steps < 3; steps += 1) mustOk(undo(desk));
  expect(yardOf()).toBe('Orchard');
  expect(getRecord(desk, { record: 'hive', id: 'nobody' })).toEqual([]);
});

test('a queen has her own changes and those of her moves', () => {
  const desk = aDeskWithBoxes('2026-06-20');
  mustOk(recordLook(desk, { ...aTypedLook, result: 'laying', queen: { id: 'queen-1', number: '26-001' } }));
  const move = { id: 'move-1', queenId: 'queen-1', movedOn: '2026-06-10', place: 'sold', goneTo: 'Mill farm' } as const;
  mustOk(moveQueen(desk, { ...move, colonyId: null, way: null, price: null, note: null }));
  mustOk(recordLook(desk, { ...aTypedLook, id: 'look-2', boxId: 'box-2' }));
  const told = getRecord(desk, { record: 'queen', id: 'queen-1' });
  expect(told.map(({ step }) => step.words.did)).toEqual(['move-queen', 'record-look']);
  const moved = told[0]?.rows ?? [];
  expect(moved.map(({ table, what }) => [table, what])).toEqual(
    expect.arrayContaining([
      ['queen_move', 'added'],
      ['queen', 'changed'],
    ]),
  );
  const queen = moved.find(({ table }) => table === 'queen');
  expect(queen?.fields).toContainEqual({ field: 'place', old: 'in-box', new: 'sold' });
  expect(queen?.fields).toContainEqual({ field: 'box_id', old: 'K01', new: null });
});
