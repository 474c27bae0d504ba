import { expect, test } from 'vitest';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

const mark = (changes: object = {}) =>
  ({ id: 'm1', batchId: 'batch-1', step: 'make-queenless', doneOn: '2026-05-03', note: null, ...changes }) as const;

test('marks a step on its day; it stays there', () => {
  const { batch } = mustOk(markStep(aDeskWithBatch(), mark()));
  expect(batch.timetable.lines.find((line) => line.step === 'make-queenless')).toMatchObject({
    state: 'done',
    doneOn: '2026-05-03',
  });
});

test('the same mark again corrects its day', () => {
  const desk = aDeskWithBatch();
  mustOk(markStep(desk, mark()));
  mustOk(markStep(desk, mark({ doneOn: '2026-05-02' })));
  expect(desk.workbook.tables.stepsDone.where({ step: 'make-queenless' }).map((one) => one.doneOn)).toEqual([
    '2026-05-02',
  ]);
});

test.each([
  ['a second mark', { id: 'm2' }, { kind: 'step-already-done', step: 'make-queenless' }],
  ['a step of another method', { step: 'cage-queen' }, { kind: 'step-not-in-timetable', step: 'cage-queen' }],
  [
    'a count before the larvae were given',
    { step: 'count-taken', doneOn: '2026-05-03' },
    { kind: 'day-before-start', start: '2026-05-04' },
  ],
  ['a batch that is gone', { batchId: 'gone' }, { kind: 'batch-not-found' }],
] as const)('refuses %s', (_what, changes, refusal) => {
  const desk = aDeskWithBatch();
  mustOk(markStep(desk, mark()));
  expect(refusalOf(markStep(desk, mark(changes)))).toMatchObject(refusal);
  expect(desk.workbook.tables.stepsDone.all()).toHaveLength(1);
});

test('refuses a count of sealed cells on a day after they left for the boxes', () => {
  const desk = aDeskWithBatch('2026-05-20');
  mustOk(markStep(desk, mark({ step: 'place-cells', doneOn: '2026-05-14' })));
  expect(refusalOf(markStep(desk, mark({ id: 'm2', step: 'count-sealed', doneOn: '2026-05-15' })))).toMatchObject({
    kind: 'done-out-of-order',
    field: 'done',
  });
  expect(desk.workbook.tables.stepsDone.all()).toHaveLength(1);
});

test('keeps a mark of today, and of the day the larvae were given', () => {
  const desk = aDeskWithBatch('2026-05-04');
  expect(mustOk(markStep(desk, mark({ doneOn: '2026-05-04' }))).notices).toEqual([]);
  expect(mustOk(markStep(desk, mark({ id: 'm2', step: 'count-taken', doneOn: '2026-05-04' }))).notices).toEqual([]);
});

test('larvae given on another day than planned move the batch, earlier or later', () => {
  for (const doneOn of ['2026-05-03', '2026-05-06']) {
    const given = mark({ step: 'give-larvae', doneOn });
    expect(mustOk(markStep(aDeskWithBatch(), given)).batch.timetable.larvaeGivenOn).toBe(doneOn);
  }
});

test('keeps a day to come and says so', () => {
  const { notices } = mustOk(markStep(aDeskWithBatch('2026-05-01'), mark()));
  expect(notices).toEqual([{ kind: 'day-in-future', field: 'doneOn', day: '2026-05-03' }]);
});

test('a look before any queen can be out is kept, and named with the earliest day', () => {
  const early = mark({ step: 'first-look', doneOn: '2026-05-14' });
  const { batch, notices } = mustOk(markStep(aDeskWithBatch('2026-05-20'), early));
  // Larvae of 4 May: no queen before 15 May, 15 days after the egg [COLOSS BEEBOOK].
  expect(notices).toEqual([{ kind: 'look-before-emergence', step: 'first-look', earliest: '2026-05-15' }]);
  expect(batch.timetable.lines.find((line) => line.step === 'first-look')?.doneOn).toBe('2026-05-14');
  const onTheDay = mark({ step: 'emergence-check', doneOn: '2026-05-15' });
  expect(mustOk(markStep(aDeskWithBatch('2026-05-20'), onTheDay)).notices).toEqual([]);
});
