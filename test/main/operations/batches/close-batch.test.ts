import { expect, test } from 'vitest';
import { closeBatch } from '../../../../main/operations/batches/close-batch.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

test('closes with a lesson', () => {
  const { batch } = mustOk(
    closeBatch(aDeskWithBatch(), { batchId: 'batch-1', closedOn: '2026-05-14', lesson: 'Start a week later.' }),
  );
  expect(batch).toMatchObject({
    state: 'closed',
    next: null,
    batch: { lesson: 'Start a week later.', closedOn: '2026-05-14' },
  });
});

test('refuses a day before the batch began, and a batch that is gone', () => {
  const desk = aDeskWithBatch();
  expect(refusalOf(closeBatch(desk, { batchId: 'batch-1', closedOn: '2026-01-01', lesson: null }))).toMatchObject({
    kind: 'day-before-start',
    field: 'closedOn',
  });
  expect(desk.workbook.tables.batches.get('batch-1')?.closedOn).toBeNull();
  expect(refusalOf(closeBatch(desk, { batchId: 'gone', closedOn: '2026-05-14', lesson: null }))).toEqual({
    kind: 'batch-not-found',
  });
});
