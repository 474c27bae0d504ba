import { expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { recordLoss } from '../../../../main/operations/batches/record-loss.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { getLosses } from '../../../../main/operations/season/get-losses.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aRow, aStart } from '../../../builders/running-batch.ts';

const asked = { factor: 'method', and: null, season: null, leaveOutPractice: true } as const;

test('adds the losses of the compared batches up, with how many of them have a reason', () => {
  const desk = aDeskWithBatch();
  const old = { newBreeder: null, newBuilder: null, breederId: 'h03', builderId: 'h12' } as const;
  mustOk(startBatch(desk, aStart({ ...old, id: 'batch-2', anchorOn: '2025-06-10' })));
  mustOk(startBatch(desk, aStart({ ...old, id: 'batch-3', anchorOn: '2025-07-10', practice: true })));
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 7 })));
  for (const batchId of ['batch-2', 'batch-3'])
    mustOk(recordBarCounts(desk, aRow(desk, { batchId, given: 10, taken: 8, countedOn: '2025-07-20' })));
  mustOk(recordLoss(desk, { id: 'l', batchId: 'batch-1', stage: 'taken', reason: 'chilled', cells: 3 }));
  mustOk(recordLoss(desk, { id: 'm', batchId: 'batch-2', stage: 'taken', reason: 'chilled', cells: 1 }));
  expect(getLosses(desk, asked).stages).toMatchObject([
    { stage: 'taken', of: 22, lost: 7, unknown: 3, reasons: [{ reason: 'chilled', cells: 4 }] },
  ]);
  expect(getLosses(desk, { ...asked, season: 2026 }).stages).toMatchObject([{ of: 12, lost: 5, unknown: 2 }]);
  expect(getLosses(desk, { ...asked, leaveOutPractice: false }).stages).toMatchObject([{ of: 32, lost: 9 }]);
});
