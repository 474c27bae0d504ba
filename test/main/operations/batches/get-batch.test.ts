import { expect, test } from 'vitest';
import { getBatch } from '../../../../main/operations/batches/get-batch.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

test('reads one batch with its calendar, counts, boxes and stream', () => {
  const batch = getBatch(aDeskWithBoxes(), { batchId: 'batch-1' });
  // Emergence 12 days after larvae of up to 24 hours were given [Chuda-Mickiewicz & Samborski 2015: 16 d 1 h from the egg].
  expect(batch?.timetable.emergence).toEqual({ earliest: '2026-05-15', expected: '2026-05-16', latest: '2026-05-17' });
  expect(batch?.placements.map((row) => row.box)).toEqual(['K01', 'K02', 'K03', 'K04', 'K05', 'K06']);
  expect(batch?.freeBoxes).toEqual(['K07', 'K08', 'K09', 'K10']);
  expect(batch?.labelsPrintedOn).toBeNull();
  expect(batch?.stream.bands.map(({ stage, alive, forecast }) => [stage, alive, forecast])).toEqual([
    ['egg', 12, false],
    ['larva', 9, false],
    ['sealed', 8, false],
    ['ready', 6, false],
    ['virgin', 6, true],
    ['laying', 6, true],
  ]);
});

test('answers null for a batch that is not there', () => {
  expect(getBatch(aDeskWithBoxes(), { batchId: 'gone' })).toBeNull();
});
