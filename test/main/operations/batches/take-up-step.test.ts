import { expect, test } from 'vitest';
import { dropStep } from '../../../../main/operations/batches/drop-step.ts';
import { takeUpStep } from '../../../../main/operations/batches/take-up-step.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

const about = { batchId: 'batch-1', step: 'check-own-cells' } as const;

test('a job that was dropped is open again, and late if its days are over', () => {
  const desk = aDeskWithBatch('2026-05-12');
  mustOk(dropStep(desk, { ...about, id: 'drop', droppedOn: '2026-05-12', reason: 'rain' }));
  const { batch } = mustOk(takeUpStep(desk, about));
  expect(batch.timetable.lines.find(({ step }) => step === about.step)).toMatchObject({
    state: 'late',
    droppedOn: null,
    dropReason: null,
  });
});

test('refuses a batch that is gone', () => {
  expect(refusalOf(takeUpStep(aDeskWithBatch(), { ...about, batchId: 'gone' }))).toEqual({ kind: 'batch-not-found' });
});
