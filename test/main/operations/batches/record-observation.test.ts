import { expect, test } from 'vitest';
import { getBatch } from '../../../../main/operations/batches/get-batch.ts';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { recordObservation } from '../../../../main/operations/batches/record-observation.ts';
import { anObservation } from '../../../builders/batch.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

test('older larvae pull every open day forward; a done day stays', () => {
  const desk = aDeskWithBatch();
  mustOk(markStep(desk, { id: 'm', batchId: 'batch-1', step: 'make-queenless', doneOn: '2026-05-03', note: null }));
  const before = getBatch(desk, { batchId: 'batch-1' })?.timetable;
  // A larva of 48 to 60 hours emerges up to a day and a half early (practice page on queenright cell raising).
  const seen = anObservation({ what: 'larva-age-note', seenOn: '2026-05-04', fromHours: 48, toHours: 60 });
  const after = mustOk(recordObservation(desk, seen)).batch.timetable;
  expect(after.placeDeadline < (before?.placeDeadline ?? '')).toBe(true);
  expect(after.emergence.earliest <= '2026-05-14').toBe(true);
  expect(after.lines.find((line) => line.step === 'make-queenless')?.doneOn).toBe('2026-05-03');
  expect(after.reckonedFrom).toMatchObject({ kind: 'seen', what: 'larva-age-note' });
});

test('refuses a sighting that needs hours and has none, or lies before the eggs were laid', () => {
  const desk = aDeskWithBatch();
  expect(refusalOf(recordObservation(desk, anObservation({ what: 'larva-age-note' })))).toMatchObject({
    kind: 'seen-needs-hours',
  });
  expect(
    refusalOf(recordObservation(desk, anObservation({ what: 'cells-sealed', seenOn: '2026-03-01' }))),
  ).toMatchObject({ kind: 'seen-before-laying' });
  expect(
    refusalOf(recordObservation(desk, anObservation({ what: 'larva-age-note', fromHours: 30, toHours: 10 }))),
  ).toMatchObject({ kind: 'seen-hours-turned-round', field: 'seen' });
  expect(desk.workbook.tables.observations.all()).toEqual([]);
});

test('the same sighting again corrects it; one of today is not to come', () => {
  const desk = aDeskWithBatch('2026-05-09');
  mustOk(recordObservation(desk, anObservation({ seenOn: '2026-05-08' })));
  expect(mustOk(recordObservation(desk, anObservation({ seenOn: '2026-05-09' }))).notices).toEqual([]);
  expect(desk.workbook.tables.observations.all().map((one) => one.seenOn)).toEqual(['2026-05-09']);
});

test('keeps a day to come and says so; refuses a batch that is gone', () => {
  const desk = aDeskWithBatch('2026-05-06');
  expect(mustOk(recordObservation(desk, anObservation({ seenOn: '2026-05-09' }))).notices).toEqual([
    { kind: 'day-in-future', field: 'seenOn', day: '2026-05-09' },
  ]);
  expect(refusalOf(recordObservation(desk, anObservation({ batchId: 'gone' })))).toEqual({ kind: 'batch-not-found' });
});
