import { expect, test } from 'vitest';
import { addBar } from '../../../../main/operations/batches/add-bar.ts';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aRow, refusalOf } from '../../../builders/running-batch.ts';

test('adds a bar after the last; a sum is unknown until it is counted too', () => {
  const desk = aDeskWithBatch();
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12 })));
  const { batch } = mustOk(addBar(desk, { batchId: 'batch-1', barId: 'second' }));
  expect(batch.bars.map((bar) => bar.number)).toEqual([1, 2]);
  expect(batch.tally.given).toBeNull();
  expect(mustOk(recordBarCounts(desk, aRow(desk, { barId: 'second', given: 8 }))).batch.tally.given).toBe(20);
});

test('refuses a batch that is gone', () => {
  expect(refusalOf(addBar(aDeskWithBatch(), { batchId: 'gone', barId: 'b' }))).toEqual({ kind: 'batch-not-found' });
});
