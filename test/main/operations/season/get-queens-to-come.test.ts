import { expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { getBatchExpectation } from '../../../../main/operations/season/get-batch-expectation.ts';
import { getQueensToCome } from '../../../../main/operations/season/get-queens-to-come.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aRow, aStart, onDay } from '../../../builders/running-batch.ts';

const hives = { newBreeder: null, newBuilder: null, breederId: 'h03', builderId: null } as const;

test('adds up what the batches may bring, by their counts or what is planned, and names those of which nothing is known', async () => {
  const desk = onDay(aDeskWithBatch(), '2026-05-10');
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, sealed: 8 })));
  mustOk(startBatch(desk, aStart({ ...hives, id: 'planned', anchorOn: '2026-06-10', cellsPlanned: 20 })));
  mustOk(startBatch(desk, aStart({ ...hives, id: 'open', anchorOn: '2026-06-20', cellsPlanned: null })));
  mustOk(startBatch(desk, aStart({ ...hives, id: 'class', anchorOn: '2026-06-25', practice: true })));
  const toCome = await getQueensToCome(desk);
  const each = await Promise.all(
    ['batch-1', 'planned'].map(async (batchId) => (await getBatchExpectation(desk, { batchId }))?.toCome),
  );
  expect(each.map((one) => one?.from)).toEqual(['sealed', 'planned']);
  expect(toCome).toMatchObject({ batches: 2, notReckoned: [{ id: 'open' }] });
  const sum = (of: 'mean' | 'lower' | 'upper') => each.reduce((total, one) => total + (one?.proved[of] ?? 0), 0);
  expect(toCome.proved?.mean).toBeCloseTo(sum('mean'), 9);
  expect([toCome.proved?.lower, toCome.proved?.upper]).toEqual([sum('lower'), sum('upper')]);
  expect(toCome.proved?.upper).toBeLessThanOrEqual(28);
});

test('without a batch nothing is promised', async () => {
  expect(await getQueensToCome(aDesk())).toEqual({ proved: null, batches: 0, notReckoned: [] });
});
