import { expect, test } from 'vitest';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { unmarkStep } from '../../../../main/operations/batches/unmark-step.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

test('opens a step again', () => {
  const desk = aDeskWithBatch();
  mustOk(markStep(desk, { id: 'm', batchId: 'batch-1', step: 'make-queenless', doneOn: '2026-05-03', note: null }));
  const { batch } = mustOk(unmarkStep(desk, { batchId: 'batch-1', step: 'make-queenless' }));
  expect(batch.timetable.lines.find((line) => line.step === 'make-queenless')?.doneOn).toBeNull();
});

test('refuses a batch that is gone', () => {
  expect(refusalOf(unmarkStep(aDeskWithBatch(), { batchId: 'gone', step: 'make-queenless' }))).toEqual({
    kind: 'batch-not-found',
  });
});
