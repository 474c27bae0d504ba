import { expect, test } from 'vitest';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { compareSeason } from '../../../../main/operations/season/compare-season.ts';
import { listComparedBatches } from '../../../../main/operations/season/list-compared-batches.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, aStart } from '../../../builders/running-batch.ts';

const ask = { factor: 'builder', and: 'season', season: null, leaveOutPractice: true } as const;

test('names each batch behind the comparison, its group, and the stages that were counted in it', () => {
  const desk = aDeskWithBoxes();
  mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null, anchorOn: '2025-05-04' })));
  const listed = listComparedBatches(desk, ask);
  expect(listed.map(({ batchId }) => batchId)).toEqual(['batch-1', 'batch-2']);
  expect(listed[0]?.counts.slice(0, 2)).toEqual([
    { stage: 'take', successes: 9, of: 12 },
    { stage: 'sealing', successes: 8, of: 9 },
  ]);
  expect(listed[1]?.counts).toEqual([]);
  expect(new Set(listed.map(({ groupId }) => groupId))).toEqual(
    new Set(compareSeason(desk, ask).rows.map(({ groupId }) => groupId)),
  );
});
