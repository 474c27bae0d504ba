import { expect, test } from 'vitest';
import { getBatch } from '../../../../main/operations/batches/get-batch.ts';
import { recordObservation } from '../../../../main/operations/batches/record-observation.ts';
import { removeObservation } from '../../../../main/operations/batches/remove-observation.ts';
import { anObservation } from '../../../builders/batch.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

test('gives back the days from before the sighting', () => {
  const desk = aDeskWithBatch();
  const before = getBatch(desk, { batchId: 'batch-1' })?.timetable;
  mustOk(
    recordObservation(
      desk,
      anObservation({ what: 'larva-age-note', seenOn: '2026-05-04', fromHours: 48, toHours: 60 }),
    ),
  );
  const { batch } = mustOk(removeObservation(desk, { batchId: 'batch-1', observationId: 'observation-1' }));
  expect(batch.timetable).toEqual(before);
});

test('refuses a sighting that is not there', () => {
  expect(refusalOf(removeObservation(aDeskWithBatch(), { batchId: 'batch-1', observationId: 'x' }))).toEqual({
    kind: 'observation-not-found',
  });
});
