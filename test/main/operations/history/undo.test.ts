import { expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { getUndoState } from '../../../../main/operations/history/get-undo-state.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { countTally } from '../../../../main/operations/tally-keeping.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, aRow } from '../../../builders/running-batch.ts';

const aTypedLook = {
  id: 'look-1',
  boxId: 'box-1',
  lookedOn: '2026-06-02',
  result: 'laying',
  strength: 4,
  food: null,
  note: null,
  queen: { id: 'queen-1', number: '26-001' },
} as const;

test('takes back a look with the number it gave the queen, and the sums of the batch follow', () => {
  const desk = aDeskWithBoxes('2026-06-02');
  const { tables } = desk.workbook;
  mustOk(recordLook(desk, aTypedLook));
  expect(tables.tallies.get('batch-1')).toMatchObject({ laying: 1, emerged: 1 });
  expect(mustOk(undo(desk))).toMatchObject({
    kind: 'change',
    words: { did: 'record-look', box: 'K01', result: 'laying', queen: '26-001' },
  });
  expect(tables.boxLooks.all()).toEqual([]);
  expect(tables.queens.all()).toEqual([]);
  expect(tables.tallies.get('batch-1')).toMatchObject({ laying: 0, emerged: 0 });
  expect(tables.tallies.get('batch-1')).toEqual(countTally(tables, 'batch-1'));
});

test('takes back one change at a time, the latest first', () => {
  const desk = aDeskWithBoxes('2026-06-02');
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 10, sealed: 8 })));
  mustOk(recordLook(desk, aTypedLook));
  mustOk(recordLook(desk, { ...aTypedLook, result: 'virgin', queen: null }));
  mustOk(undo(desk));
  expect(desk.workbook.tables.boxLooks.all()).toMatchObject([{ result: 'laying' }]);
  mustOk(undo(desk));
  expect(getUndoState(desk).undo?.words).toEqual({ did: 'record-bar-counts', batch: '26-01', bar: 1 });
});

test('says so where there is nothing to take back', () => {
  expect(undo(aDesk())).toEqual(refuse({ kind: 'nothing-to-undo' }));
});
