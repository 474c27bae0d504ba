import { expect, test } from 'vitest';
import { editBatch } from '../../../../main/operations/batches/edit-batch.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

test('changes note, lesson and practice, and nothing else', () => {
  const desk = aDeskWithBatch();
  const before = desk.workbook.tables.batches.get('batch-1');
  mustOk(editBatch(desk, { batchId: 'batch-1', note: 'cold night', practice: true, lesson: 'feed first' }));
  expect(desk.workbook.tables.batches.get('batch-1')).toEqual({
    ...before,
    note: 'cold night',
    practice: true,
    lesson: 'feed first',
  });
});

test('refuses a batch that is gone', () => {
  expect(
    refusalOf(editBatch(aDeskWithBatch(), { batchId: 'gone', note: null, practice: false, lesson: null })),
  ).toEqual({ kind: 'batch-not-found' });
});
