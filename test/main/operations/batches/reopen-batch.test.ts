import { expect, test } from 'vitest';
import { closeBatch } from '../../../../main/operations/batches/close-batch.ts';
import { readBatch } from '../../../../main/operations/batches/read-batch.ts';
import { reopenBatch } from '../../../../main/operations/batches/reopen-batch.ts';
import type { Batch } from '../../../../shared/model/batch.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

test('a batch opened again runs as before it was closed, and keeps its lesson', () => {
  const desk = aDeskWithBatch();
  const { tables } = desk.workbook;
  const before = readBatch(desk, tables, tables.batches.get('batch-1') as Batch);
  mustOk(closeBatch(desk, { batchId: 'batch-1', closedOn: '2026-05-14', lesson: 'Start a week later.' }));
  const { batch } = mustOk(reopenBatch(desk, { batchId: 'batch-1' }));
  expect(batch.next).not.toBeNull();
  expect([batch.state, batch.next, batch.timetable]).toEqual([before.state, before.next, before.timetable]);
  expect(batch.batch).toMatchObject({ closedOn: null, lesson: 'Start a week later.' });
});

test('refuses a batch that is gone', () => {
  expect(refusalOf(reopenBatch(aDeskWithBatch(), { batchId: 'gone' }))).toEqual({ kind: 'batch-not-found' });
});
