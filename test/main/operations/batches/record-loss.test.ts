import { expect, test } from 'vitest';
import { getBatch } from '../../../../main/operations/batches/get-batch.ts';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { recordLoss } from '../../../../main/operations/batches/record-loss.ts';
import { removeBatch } from '../../../../main/operations/batches/remove-batch.ts';
import type { Loss } from '../../../../shared/model/loss.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aRow, refusalOf } from '../../../builders/running-batch.ts';

const aLoss = (changes: Partial<Loss> = {}): Loss => ({
  id: 'loss-1',
  batchId: 'batch-1',
  stage: 'taken',
  reason: 'chilled',
  cells: 3,
  ...changes,
});
/** 12 given, 7 taken: 5 lost. */
function aCountedDesk() {
  const desk = aDeskWithBatch();
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 7 })));
  return desk;
}
const linesOf = (desk: ReturnType<typeof aCountedDesk>) => getBatch(desk, { batchId: 'batch-1' })?.losses ?? [];

test('a reason stands beside the loss, is corrected by the same reason, and goes with a 0', () => {
  const desk = aCountedDesk();
  expect(linesOf(desk)).toMatchObject([{ stage: 'taken', lost: 5, of: 12, reasons: [], unknown: 5 }]);
  mustOk(recordLoss(desk, aLoss()));
  mustOk(recordLoss(desk, aLoss({ id: 'loss-2', cells: 4 })));
  expect(linesOf(desk)).toMatchObject([{ reasons: [{ reason: 'chilled', cells: 4 }], unknown: 1 }]);
  expect(desk.workbook.tables.losses.all()).toHaveLength(1);
  mustOk(recordLoss(desk, aLoss({ id: 'loss-3', cells: 0 })));
  expect(desk.workbook.tables.losses.all()).toEqual([]);
});

test('a reason of a count that was corrected to no loss can be taken back, and no other be added', () => {
  const desk = aCountedDesk();
  mustOk(recordLoss(desk, aLoss()));
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 12 })));
  expect(linesOf(desk)).toMatchObject([{ stage: 'taken', lost: 0, tooMany: 3 }]);
  const other = recordLoss(desk, aLoss({ id: 'loss-2', reason: 'drowned', cells: 1 }));
  expect(refusalOf(other)).toMatchObject({ kind: 'nothing-lost', stage: 'taken' });
  mustOk(recordLoss(desk, aLoss({ cells: 0 })));
  expect(linesOf(desk)).toEqual([]);
});

test('is one step for undo', () => {
  const desk = aCountedDesk();
  mustOk(recordLoss(desk, aLoss()));
  expect(mustOk(desk.workbook.undo()).words).toMatchObject({ did: 'record-loss', batch: '26-01', reason: 'chilled' });
  expect(linesOf(desk)).toMatchObject([{ unknown: 5 }]);
});

test('refuses more than was lost, a stage where no loss is known, and a batch that is gone', () => {
  const desk = aCountedDesk();
  mustOk(recordLoss(desk, aLoss()));
  expect(refusalOf(recordLoss(desk, aLoss({ id: 'x', reason: 'drowned', cells: 3 })))).toEqual({
    kind: 'more-reasons-than-lost',
    field: 'cells',
    lost: 5,
    explained: 6,
  });
  expect(refusalOf(recordLoss(desk, aLoss({ stage: 'emerged' })))).toEqual({
    kind: 'nothing-lost',
    field: 'cells',
    stage: 'emerged',
  });
  expect(refusalOf(recordLoss(desk, aLoss({ batchId: 'gone' })))).toEqual({ kind: 'batch-not-found' });
  expect(desk.workbook.tables.losses.all()).toHaveLength(1);
});

test('a count corrected later leaves the reasons and says that they are too many; all go with the batch', () => {
  const desk = aCountedDesk();
  mustOk(recordLoss(desk, aLoss({ cells: 5 })));
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9 })));
  expect(linesOf(desk)).toMatchObject([{ lost: 3, unknown: 0, tooMany: 2 }]);
  mustOk(removeBatch(desk, { batchId: 'batch-1' }));
  expect(desk.workbook.tables.losses.all()).toEqual([]);
});
