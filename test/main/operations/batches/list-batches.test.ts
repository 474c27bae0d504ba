import { expect, test } from 'vitest';
import { listBatches } from '../../../../main/operations/batches/list-batches.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, aStart, onDay } from '../../../builders/running-batch.ts';

test('lists the newest first, with how each stands', () => {
  const desk = aDeskWithBatch('2026-05-08');
  mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null, anchorOn: '2026-06-01' })));
  expect(listBatches(desk).map(({ code, state }) => [code, state])).toEqual([
    ['26-02', 'planned'],
    ['26-01', 'running'],
  ]);
  expect(listBatches(onDay(desk, '2026-09-01')).map((line) => line.state)).toEqual(['closed', 'closed']);
});

test('names the next open job and that it is late', () => {
  const [line] = listBatches(aDeskWithBatch('2026-05-08'));
  expect(line?.next).toMatchObject({ late: true });
  expect(listBatches(aDesk())).toEqual([]);
});

test('what a later step has overtaken is not the next job', () => {
  const [line] = listBatches(aDeskWithBoxes('2026-05-15'));
  expect(line?.next).toMatchObject({ step: 'set-out', late: false });
});
