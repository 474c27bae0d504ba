import { expect, test } from 'vitest';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { moveStep } from '../../../../main/operations/batches/move-step.ts';
import { previewSlip } from '../../../../main/operations/batches/preview-slip.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aStart, refusalOf } from '../../../builders/running-batch.ts';

const move = (changes: object = {}) =>
  ({
    id: 'mv',
    batchId: 'batch-1',
    step: 'check-own-cells',
    movedTo: '2026-05-09',
    reason: 'rain',
    ...changes,
  }) as const;

test('puts an open step on another day of its window, and the last choice holds', () => {
  const desk = aDeskWithBatch();
  mustOk(moveStep(desk, move({ movedTo: '2026-05-07' })));
  const { batch } = mustOk(moveStep(desk, move({ id: 'mv2' })));
  expect(batch.timetable.lines.find((line) => line.step === 'check-own-cells')).toMatchObject({
    expected: '2026-05-09',
    movedByPerson: true,
    moveReason: 'rain',
  });
  expect(desk.workbook.tables.stepMoves.all()).toHaveLength(1);
  const silent = mustOk(moveStep(desk, move({ id: 'mv3', reason: '' }))).batch.timetable.lines;
  expect(silent.filter((line) => line.movedByPerson).map((line) => line.moveReason)).toEqual([null]);
});

test('refuses a day the bees do not leave, naming those they do', () => {
  const desk = aDeskWithBatch();
  for (const movedTo of ['2026-05-12', '2026-05-06'])
    expect(refusalOf(moveStep(desk, move({ movedTo })))).toMatchObject({
      kind: 'move-past-window',
      field: 'movedTo',
      earliest: '2026-05-07',
    });
  expect(desk.workbook.tables.stepMoves.all()).toEqual([]);
});

test('refuses a done step, a step of another method and a batch that is gone', () => {
  const desk = aDeskWithBatch();
  mustOk(markStep(desk, { id: 'm', batchId: 'batch-1', step: 'check-own-cells', doneOn: '2026-05-08', note: null }));
  expect(refusalOf(moveStep(desk, move()))).toMatchObject({ kind: 'step-already-done' });
  expect(refusalOf(moveStep(desk, move({ step: 'cage-queen' })))).toMatchObject({ kind: 'step-not-in-timetable' });
  expect(refusalOf(moveStep(desk, move({ batchId: 'gone' })))).toEqual({ kind: 'batch-not-found' });
});

test('refuses a day before a step that must come first and is done', () => {
  const desk = aDeskWithBatch('2026-06-20');
  mustOk(markStep(desk, { id: 'm', batchId: 'batch-1', step: 'sealed-brood-look', doneOn: '2026-06-15', note: null }));
  expect(refusalOf(moveStep(desk, move({ step: 'give-up', movedTo: '2026-06-13' })))).toMatchObject({
    kind: 'moved-out-of-order',
    field: 'moved',
    after: 'sealed-brood-look',
  });
  expect(desk.workbook.tables.stepMoves.all()).toEqual([]);
});

const START = { step: 'give-larvae', reason: '' } as const;

test('a job put on a day of its own goes along when the beginning is moved, as the preview says, in one step', () => {
  const desk = aDeskWithBatch('2026-05-01');
  mustOk(moveStep(desk, move()));
  const dayOf = () => desk.workbook.tables.stepMoves.all().map(({ movedTo }) => movedTo);
  const toLater = move({ ...START, id: 'mv2', movedTo: '2026-05-24' });
  const preview = mustOk(previewSlip(desk, { kind: 'move', change: toLater }));
  expect(preview.lines.find(({ step }) => step === 'check-own-cells')).toMatchObject({
    was: { expected: '2026-05-09' },
    becomes: { expected: '2026-05-29' },
  });
  mustOk(moveStep(desk, toLater));
  expect(dayOf()).toEqual(['2026-05-29']);
  mustOk(moveStep(desk, move({ ...START, id: 'mv3', movedTo: '2026-05-23' })));
  expect(dayOf()).toEqual(['2026-05-28']);
  mustOk(desk.workbook.undo());
  mustOk(desk.workbook.undo());
  expect(dayOf()).toEqual(['2026-05-09']);
});

test('a batch cannot be moved onto days of its builder’s other batch, nor be previewed there', () => {
  const desk = aDeskWithBatch('2026-05-01');
  const next = { id: 'batch-2', newBreeder: null, newBuilder: null, breederId: 'h03', builderId: 'h12' };
  mustOk(startBatch(desk, aStart({ ...next, anchorOn: '2026-06-20' })));
  const onto = move({ ...START, batchId: 'batch-2', movedTo: '2026-05-06' });
  const refusal = { kind: 'builder-in-use', builder: 'H12', batch: '26-01' };
  expect(refusalOf(previewSlip(desk, { kind: 'move', change: onto }))).toMatchObject(refusal);
  expect(refusalOf(moveStep(desk, onto))).toMatchObject(refusal);
  expect(desk.workbook.tables.batches.get('batch-2')?.anchorOn).toBe('2026-06-20');
  // Its own days are not in its way.
  mustOk(moveStep(desk, { ...onto, movedTo: '2026-06-19' }));
});
