import { describe, expect, test } from 'vitest';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { moveStep } from '../../../../main/operations/batches/move-step.ts';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { recordObservation } from '../../../../main/operations/batches/record-observation.ts';
import { removeBatch } from '../../../../main/operations/batches/remove-batch.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { addBoxes } from '../../../../main/operations/boxes/add-boxes.ts';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { placeCells } from '../../../../main/operations/boxes/place-cells.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { getUndoState } from '../../../../main/operations/history/get-undo-state.ts';
import { redo } from '../../../../main/operations/history/redo.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { recordHiveLook } from '../../../../main/operations/hives/record-hive-look.ts';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { getQueen } from '../../../../main/operations/queens/get-queen.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { anObservation } from '../../../builders/batch.ts';
import { aColony } from '../../../builders/colony.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aLook } from '../../../builders/mating-box.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBoxes, aRow, aStart, PLACED_ON, refusalOf } from '../../../builders/running-batch.ts';
import { aWatchedDesk, dataDigest } from '../../../builders/watched-workbook.ts';

/** Everything a batch can have: two bars, counts, a done and a moved step, a sighting, cells in boxes, a printed label. */
function aFullBatch(desk: Desk): void {
  const on = { batchId: 'batch-1' };
  const hives = { newBreeder: null, newBuilder: null, breederId: 'h03', builderId: 'h12' };
  mustOk(startBatch(desk, aStart({ ...hives, bars: 2, note: 'by mistake' })));
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, sealed: 8 })));
  mustOk(markStep(desk, { id: 'done', ...on, step: 'count-taken', doneOn: '2026-05-05', note: null }));
  mustOk(moveStep(desk, { id: 'moved', ...on, step: 'first-look', movedTo: '2026-05-29', reason: 'rain' }));
  mustOk(recordObservation(desk, anObservation({ ...on, what: 'cells-sealed', seenOn: '2026-05-09' })));
  const ids = ['placement-1', 'placement-2'];
  mustOk(placeCells(desk, { ...on, boxes: 'K01-K02', ids, placedOn: PLACED_ON, barId: null }));
  fill(desk, ({ labelPrints, followUps }) => {
    labelPrints.insert({ id: 'label', placementId: 'placement-1', printedOn: PLACED_ON, words: 'K01' });
    const open = { queenId: null, colonyId: null, doneOn: null, answer: null, note: null };
    followUps.insert({ id: 'f', what: 'look-again', dueOn: PLACED_ON, latestOn: PLACED_ON, boxId: 'box-1', ...open });
  });
}

describe('a batch that is taken out', () => {
  test('leaves the workbook as it was before it was started, bit for bit; undo and redo likewise', () => {
    const { desk, db } = aWatchedDesk();
    fill(desk, ({ colonies, colonyRoles }) => {
      for (const [id, role] of [
        ['h03', 'breeder'],
        ['h12', 'builder'],
      ] as const) {
        colonies.insert(aColony({ id, code: id.toUpperCase() }));
        colonyRoles.insert({ id: `role-${id}`, colonyId: id, season: 2026, role });
      }
    });
    const ids = ['box-1', 'box-2', 'box-3'];
    mustOk(addBoxes(desk, { ids, codes: 'K01-K03', yardId: null, row: null, boxType: 'mini' }));
    const before = dataDigest(db);
    const boxes = listBoxes(desk);
    aFullBatch(desk);
    const full = dataDigest(db);
    expect(mustOk(removeBatch(desk, { batchId: 'batch-1' }))).toEqual({ batch: '26-01', queens: 0, hives: [] });
    expect(dataDigest(db)).toBe(before);
    expect(listBoxes(desk)).toEqual(boxes);
    expect(getUndoState(desk).undo?.words).toEqual({ did: 'remove-batch', batch: '26-01', queens: 0, hives: [] });
    mustOk(undo(desk));
    expect(dataDigest(db)).toBe(full);
    mustOk(redo(desk));
    expect(dataDigest(db)).toBe(before);
  });

  test('touches no other batch, and its boxes take the cells of another at once', () => {
    const desk = aDeskWithBoxes();
    mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null })));
    const row = aRow(desk, { batchId: 'batch-2', given: 10, taken: 6, sealed: 6 });
    mustOk(recordBarCounts(desk, row));
    const { tables } = desk.workbook;
    const other = { counts: tables.counts.where({ batchId: 'batch-2' }), tally: tables.tallies.get('batch-2') };
    mustOk(removeBatch(desk, { batchId: 'batch-1' }));
    expect({ counts: tables.counts.all(), tally: tables.tallies.get('batch-2') }).toEqual(other);
    expect(tables.tallies.get('batch-1')).toBeNull();
    const cells = { batchId: 'batch-2', boxes: 'K01-K06', placedOn: PLACED_ON, barId: null };
    const ids = Array.from({ length: 6 }, (_, index) => `new-${index}`);
    expect(mustOk(placeCells(desk, { ...cells, ids })).boxes[0]).toMatchObject({ code: 'K01', state: 'cell' });
  });

  test('leaves what was seen in its boxes', () => {
    const desk = aDeskWithBoxes('2026-05-28');
    mustOk(recordLook(desk, { ...aLook({ lookedOn: '2026-05-28', note: 'calm' }), queen: null }));
    mustOk(removeBatch(desk, { batchId: 'batch-1' }));
    expect(desk.workbook.tables.boxLooks.all()).toMatchObject([
      { boxId: 'box-1', placementId: null, result: 'laying', note: 'calm' },
    ]);
    expect(listBoxes(desk)[0]).toMatchObject({ code: 'K01', state: 'free', batch: null });
  });

  test('that is not there is refused', () => {
    expect(refusalOf(removeBatch(aDeskWithBoxes(), { batchId: 'none' }))).toEqual({ kind: 'batch-not-found' });
  });
});

describe('a queen with a number who came from it', () => {
  test('stays with her number, breeder, mother and line, and the step says so', () => {
    const desk = aDeskWithBoxes('2026-06-06');
    // Queen 25-001 heads the breeder since last year, so that she is the mother of what was raised from it.
    fill(desk, ({ queens, queenMoves, colonies }) => {
      queens.insert(aQueen({ id: 'old', number: '25-001', bornIn: 2025, place: 'in-hive', colonyId: 'h03' }));
      const nowhere = { goneTo: null, way: null, price: null, note: null };
      queenMoves.insert({
        id: 'm',
        queenId: 'old',
        movedOn: '2025-07-01',
        place: 'in-hive',
        colonyId: 'h03',
        ...nowhere,
      });
      const breeder = colonies.get('h03');
      if (breeder) colonies.update({ ...breeder, motherLine: 'Blue' });
    });
    mustOk(
      recordLook(desk, {
        ...aLook({ lookedOn: '2026-06-06', result: 'proved' }),
        queen: { id: 'q', number: '26-001' },
      }),
    );
    const before = getQueen(desk, { queenId: 'q' });
    expect(before).toMatchObject({ batch: '26-01', mother: { name: '25-001' }, queen: { motherId: null } });
    expect(mustOk(removeBatch(desk, { batchId: 'batch-1' }))).toEqual({ batch: '26-01', queens: 1, hives: ['H12'] });
    const after = getQueen(desk, { queenId: 'q' });
    expect(after).toMatchObject({ batch: null, breeder: 'H03', mother: before?.mother, mothers: before?.mothers });
    expect(after?.queen).toEqual({ ...before?.queen, motherId: 'old', batchId: null, placementId: null });
    expect(after?.queen.motherLine).toBe('Blue');
    expect(getUndoState(desk).undo?.words).toEqual({ did: 'remove-batch', batch: '26-01', queens: 1, hives: ['H12'] });
    mustOk(undo(desk));
    expect(getQueen(desk, { queenId: 'q' })).toEqual(before);
  });

  test('and is still in her box keeps it from being free, until she goes', () => {
    const desk = aDeskWithBoxes('2026-06-06');
    const look = aLook({ lookedOn: '2026-06-06', result: 'proved' });
    mustOk(recordLook(desk, { ...look, queen: { id: 'q', number: '26-001' } }));
    mustOk(removeBatch(desk, { batchId: 'batch-1' }));
    expect(listBoxes(desk)[0]).toMatchObject({
      code: 'K01',
      state: 'proved',
      queenNumber: '26-001',
      placementId: null,
    });
    expect(listBoxes(desk)[1]).toMatchObject({ code: 'K02', state: 'free' });
    const start = { id: 'batch-2', newBreeder: null, newBuilder: null };
    mustOk(startBatch(desk, aStart(start)));
    const cells = { batchId: 'batch-2', boxes: 'K01', placedOn: PLACED_ON, barId: null, ids: ['new'] };
    const refusal = { kind: 'box-holds-a-queen', field: 'boxes', box: 'K01', queen: '26-001' };
    expect(refusalOf(placeCells(desk, cells))).toEqual(refusal);
    const move = { movedOn: '2026-06-07', place: 'caged', colonyId: null } as const;
    const nothingElse = { goneTo: null, way: null, price: null, note: null };
    mustOk(moveQueen(desk, { id: 'm', queenId: 'q', ...move, ...nothingElse }));
    expect(listBoxes(desk)[0]).toMatchObject({ code: 'K01', state: 'free', queenNumber: null });
    mustOk(placeCells(desk, cells));
  });
});

describe('a hive that was made in the start form', () => {
  const codes = (desk: Desk) => desk.workbook.tables.colonies.all().map(({ code }) => code);

  test('goes with the batch, comes back with the undo, and goes again', () => {
    const { desk, db } = aWatchedDesk();
    const before = dataDigest(db);
    mustOk(startBatch(desk, aStart()));
    const started = dataDigest(db);
    const gone = { batch: '26-01', queens: 0, hives: ['H03', 'H12'] };
    expect(mustOk(removeBatch(desk, { batchId: 'batch-1' }))).toEqual(gone);
    expect(dataDigest(db)).toBe(before);
    mustOk(undo(desk));
    expect(dataDigest(db)).toBe(started);
    expect(mustOk(removeBatch(desk, { batchId: 'batch-1' }))).toEqual(gone);
    expect(dataDigest(db)).toBe(before);
  });

  test('stays once anything else was said of it, or another batch or queen came from it', () => {
    const said: readonly ((desk: Desk) => void)[] = [
      (desk) => mustOk(saveHive(desk, aColony({ id: 'h03', code: 'H03', name: 'Anna' }))),
      (desk) =>
        mustOk(
          recordHiveLook(desk, {
            ...{ id: 'l', colonyId: 'h03', lookedOn: '2026-05-10' },
            ...{ strength: 4, food: null, note: '' },
          }),
        ),
      (desk) =>
        mustOk(
          startBatch(
            desk,
            aStart({
              ...{ id: 'batch-2', newBreeder: null, newBuilder: null },
              breederId: 'h03',
              anchorOn: '2026-07-01',
            }),
          ),
        ),
      (desk) => fill(desk, ({ queens }) => queens.insert(aQueen({ breederId: 'h03' }))),
    ];
    for (const say of said) {
      const { desk } = aWatchedDesk();
      mustOk(startBatch(desk, aStart()));
      say(desk);
      expect(mustOk(removeBatch(desk, { batchId: 'batch-1' })).hives).toEqual(['H12']);
      expect(codes(desk)).toEqual(['H03']);
    }
  });

  test('is not one that was there before, however little is known of it', () => {
    const { desk } = aWatchedDesk();
    mustOk(saveHive(desk, aColony({ id: 'h03', code: 'H03' })));
    mustOk(startBatch(desk, aStart({ newBreeder: null, breederId: 'h03' })));
    expect(mustOk(removeBatch(desk, { batchId: 'batch-1' })).hives).toEqual(['H12']);
    expect(codes(desk)).toEqual(['H03']);
  });
});
