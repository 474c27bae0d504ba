import { expect, test } from 'vitest';
import { dropStep } from '../../../../main/operations/batches/drop-step.ts';
import { getBatch } from '../../../../main/operations/batches/get-batch.ts';
import { listBatches } from '../../../../main/operations/batches/list-batches.ts';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { moveStep } from '../../../../main/operations/batches/move-step.ts';
import { unmarkStep } from '../../../../main/operations/batches/unmark-step.ts';
import { getToday } from '../../../../main/operations/today/get-today.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, onDay, refusalOf } from '../../../builders/running-batch.ts';

const drop = (changes: object = {}) =>
  ({
    id: 'drop',
    batchId: 'batch-1',
    step: 'check-own-cells',
    droppedOn: '2026-05-12',
    reason: 'not one was taken',
    ...changes,
  }) as const;
/** The builder's own cells are looked for on days 3 to 6 after larvae, 7 to 10 May: late on the 12th. */
const desk = () => aDeskWithBatch('2026-05-12');
const lineOf = (of: ReturnType<typeof desk>, step = 'check-own-cells') =>
  getBatch(of, { batchId: 'batch-1' })?.timetable.lines.find((line) => line.step === step);
const daysOf = (of: ReturnType<typeof desk>) =>
  getBatch(of, { batchId: 'batch-1' })?.timetable.lines.map(({ step, earliest, latest }) => [step, earliest, latest]);

test('a late job that will not be done is neither done nor late, its reason is kept, and no day moves', () => {
  const of = desk();
  const late = () => getToday(of).late.map(({ step, canBeDropped }) => [step, canBeDropped]);
  expect(late()).toContainEqual(['check-own-cells', true]);
  const before = daysOf(of);
  mustOk(dropStep(of, drop()));
  expect(lineOf(of)).toMatchObject({
    state: 'dropped',
    doneOn: null,
    droppedOn: '2026-05-12',
    dropReason: 'not one was taken',
    canBeDropped: false,
  });
  expect(late().flat()).not.toContain('check-own-cells');
  expect(daysOf(of)).toEqual(before);
  expect(listBatches(of)[0]?.next?.step).not.toBe('check-own-cells');
});

test('said once more, the last reason holds, and without one there is none', () => {
  const of = desk();
  mustOk(dropStep(of, drop()));
  mustOk(dropStep(of, drop({ id: 'again', reason: '' })));
  expect(of.workbook.tables.stepDrops.all()).toHaveLength(1);
  expect(lineOf(of)).toMatchObject({ state: 'dropped', dropReason: null });
});

test('is one step for undo', () => {
  const of = desk();
  mustOk(dropStep(of, drop()));
  expect(mustOk(of.workbook.undo()).words).toEqual({ did: 'drop-step', batch: '26-01', step: 'check-own-cells' });
  expect(lineOf(of)).toMatchObject({ state: 'late', droppedOn: null });
});

test('done after all, or put on a day, it is open or done again, and a mark taken back does not drop it', () => {
  const of = desk();
  mustOk(dropStep(of, drop()));
  mustOk(markStep(of, { id: 'm', batchId: 'batch-1', step: 'check-own-cells', doneOn: '2026-05-10', note: null }));
  expect(lineOf(of)).toMatchObject({ state: 'done', droppedOn: null, dropReason: null });
  mustOk(unmarkStep(of, { batchId: 'batch-1', step: 'check-own-cells' }));
  expect(lineOf(of)).toMatchObject({ state: 'late' });
  mustOk(dropStep(of, drop()));
  const move = { id: 'mv', batchId: 'batch-1', step: 'check-own-cells', movedTo: '2026-05-09', reason: '' } as const;
  mustOk(moveStep(of, move));
  expect(lineOf(of)).toMatchObject({ state: 'late', droppedOn: null, movedByPerson: true });
});

test('what was done without a mark of its own, such as cells put in boxes, counts as done over a drop', () => {
  const of = aDeskWithBoxes('2026-05-20');
  fill(of, (tables) => tables.stepDrops.insert(drop({ step: 'place-cells' })));
  expect(lineOf(of, 'place-cells')).toMatchObject({ state: 'done', droppedOn: null });
});

test('refuses what biology needs, what is done, a step of another method and a batch that is gone', () => {
  const of = onDay(desk(), '2026-05-16');
  expect(getToday(of).late.find(({ step }) => step === 'place-cells')).toMatchObject({ canBeDropped: false });
  expect(refusalOf(dropStep(of, drop({ step: 'place-cells' })))).toMatchObject({ kind: 'step-needed', field: 'step' });
  expect(refusalOf(dropStep(of, drop({ step: 'emergence' })))).toMatchObject({ kind: 'step-needed' });
  mustOk(markStep(of, { id: 'm', batchId: 'batch-1', step: 'check-own-cells', doneOn: '2026-05-10', note: null }));
  expect(refusalOf(dropStep(of, drop()))).toMatchObject({ kind: 'step-already-done' });
  expect(refusalOf(dropStep(of, drop({ step: 'cage-queen' })))).toMatchObject({ kind: 'step-not-in-timetable' });
  expect(refusalOf(dropStep(of, drop({ batchId: 'gone' })))).toEqual({ kind: 'batch-not-found' });
  expect(of.workbook.tables.stepDrops.all()).toEqual([]);
});
