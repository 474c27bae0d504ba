import { expect, test } from 'vitest';
import { setWarmth } from '../../../../main/operations/batches/set-warmth.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

const emergence = (celsius: number | null) =>
  mustOk(setWarmth(aDeskWithBatch(), { batchId: 'batch-1', sealedCelsius: celsius })).batch.timetable.emergence;

test('cool cells ripen later, warm ones earlier', () => {
  // 32 °C against 34.5 °C puts emergence off by 27 hours [Chuda-Mickiewicz & Samborski 2015].
  expect(emergence(null)).toEqual({ earliest: '2026-05-15', expected: '2026-05-16', latest: '2026-05-17' });
  expect(emergence(32)).toEqual({ earliest: '2026-05-15', expected: '2026-05-17', latest: '2026-05-19' });
});

test('a warmth that nothing can be reckoned from is refused and leaves the batch as it was', () => {
  const desk = aDeskWithBatch();
  expect(refusalOf(setWarmth(desk, { batchId: 'batch-1', sealedCelsius: 12 }))).toMatchObject({
    kind: 'temperature-impossible',
    field: 'sealedStageCelsius',
  });
  expect(desk.workbook.tables.batches.get('batch-1')?.sealedCelsius).toBeNull();
  expect(refusalOf(setWarmth(desk, { batchId: 'gone', sealedCelsius: 34 }))).toEqual({ kind: 'batch-not-found' });
});
