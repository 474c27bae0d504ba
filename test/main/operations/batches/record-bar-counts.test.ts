import { describe, expect, test } from 'vitest';
import { addBar } from '../../../../main/operations/batches/add-bar.ts';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, aRow, refusalOf } from '../../../builders/running-batch.ts';

describe('typing a row of counts', () => {
  test('keeps what is not counted apart from nothing', () => {
    const desk = aDeskWithBatch();
    const { batch } = mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 0 })));
    expect(batch.bars[0]?.counts).toEqual({ given: 12, taken: 0, removed: null, sealed: null });
    expect(batch.tally).toMatchObject({ given: 12, taken: 0, sealed: null });
  });

  test('clears a count with an empty field, and corrects it in place', () => {
    const desk = aDeskWithBatch();
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9 })));
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 10 })));
    expect(desk.workbook.tables.counts.where({ stage: 'taken' }).map((count) => count.cells)).toEqual([10]);
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12 })));
    expect(desk.workbook.tables.counts.where({ stage: 'taken' })).toEqual([]);
    expect(desk.workbook.tables.tallies.get('batch-1')?.taken).toBeNull();
  });

  test('takes cells removed on purpose out of what went on to sealing', () => {
    const desk = aDeskWithBatch();
    const { batch } = mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 10, removed: 3, sealed: 7 })));
    expect(batch.tally).toMatchObject({ taken: 10, enteredSealing: 7, sealed: 7 });
  });

  test('marks the job of counting as done on the day it was counted', () => {
    const desk = aDeskWithBatch();
    const { batch } = mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, countedOn: '2026-05-05' })));
    const line = (step: string) => batch.timetable.lines.find((one) => one.step === step);
    expect(line('count-taken')).toMatchObject({ state: 'done', doneOn: '2026-05-05' });
    expect(line('count-sealed')?.state).not.toBe('done');
  });

  test('a count taken back leaves its job open, the larvae given, and what the person marked with a note', () => {
    const desk = aDeskWithBatch();
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, sealed: 8 })));
    const mark = desk.workbook.tables.stepsDone.where({ step: 'count-sealed' })[0];
    if (mark) mustOk(markStep(desk, { ...mark, note: 'two looks' }));
    mustOk(recordBarCounts(desk, aRow(desk)));
    expect(desk.workbook.tables.stepsDone.all().map(({ step }) => step)).toEqual(['give-larvae', 'count-sealed']);
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 7, countedOn: '2026-05-06' })));
    expect(desk.workbook.tables.stepsDone.where({ step: 'count-taken' })).toMatchObject([{ doneOn: '2026-05-06' }]);
  });

  test.each([
    [
      'more taken than given',
      { given: 12, taken: 15 },
      { kind: 'more-taken-than-given', field: 'taken', given: 12, taken: 15 },
    ],
    [
      'more sealed than taken',
      { given: 12, taken: 9, sealed: 10 },
      { kind: 'more-sealed-than-taken', field: 'sealed', taken: 9, sealed: 10 },
    ],
    [
      'more sealed than taken and left in',
      { given: 12, taken: 9, removed: 2, sealed: 8 },
      { kind: 'more-sealed-than-taken', field: 'sealed', taken: 7, sealed: 8 },
    ],
    [
      'more sealed than given',
      { given: 12, sealed: 13 },
      { kind: 'more-sealed-than-given', field: 'sealed', given: 12, sealed: 13 },
    ],
    [
      'more sealed than can be left where taken ones were not counted',
      { given: 12, removed: 3, sealed: 10 },
      { kind: 'more-sealed-than-left', field: 'sealed', given: 12, removed: 3, sealed: 10 },
    ],
    [
      'more removed than taken',
      { given: 12, taken: 4, removed: 5 },
      { kind: 'more-removed-than-taken', field: 'removed', taken: 4, removed: 5 },
    ],
    [
      'a day before the larvae were given',
      { given: 12, countedOn: '2026-05-03' },
      { kind: 'day-before-start', field: 'countedOn', day: '2026-05-03', start: '2026-05-04' },
    ],
    ['a bar that is gone', { barId: 'gone' }, { kind: 'bar-not-found' }],
    ['a batch that is gone', { batchId: 'gone' }, { kind: 'batch-not-found' }],
  ] as const)('refuses %s and writes nothing', (_what, changes, refusal) => {
    const desk = aDeskWithBatch();
    expect(refusalOf(recordBarCounts(desk, aRow(desk, changes)))).toEqual(refusal);
    expect(desk.workbook.tables.counts.all()).toEqual([]);
  });

  test('refuses fewer sealed than are in boxes already', () => {
    const desk = aDeskWithBoxes();
    const result = recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, sealed: 5 }));
    expect(refusalOf(result)).toEqual({ kind: 'more-placed-than-sealed', field: 'sealed', placed: 6, sealed: 5 });
  });

  test.each([
    ['as many taken as given, and sealed as taken', { given: 12, taken: 12, sealed: 12 }],
    ['all taken cells removed', { given: 12, taken: 9, removed: 9, sealed: 0 }],
    ['sealed cells where taken ones were not counted', { given: 12, sealed: 12 }],
    ['sealed cells where given ones were not counted', { sealed: 12 }],
    ['the day the larvae were given', { given: 12, countedOn: '2026-05-04' }],
    ['removed cells where nothing else was counted', { removed: 2 }],
    ['all sealed that can be left', { given: 12, removed: 3, sealed: 9 }],
  ] as const)('keeps %s', (_what, changes) => {
    const desk = aDeskWithBatch();
    expect(mustOk(recordBarCounts(desk, aRow(desk, changes))).notices).toEqual([]);
  });

  test('keeps as many sealed as are in boxes, and fewer while a bar is not counted', () => {
    const desk = aDeskWithBoxes();
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, sealed: 6 })));
    mustOk(addBar(desk, { batchId: 'batch-1', barId: 'second' }));
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, sealed: 5 })));
  });

  test('giving the larvae is done on their own day, whenever they are counted', () => {
    const desk = aDeskWithBatch();
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, countedOn: '2026-05-06' })));
    expect(desk.workbook.tables.stepsDone.all().map(({ step, doneOn }) => [step, doneOn])).toEqual([
      ['give-larvae', '2026-05-04'],
      ['count-taken', '2026-05-06'],
    ]);
  });

  test('a count that did not change keeps the day it was made', () => {
    const desk = aDeskWithBatch();
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, countedOn: '2026-05-04' })));
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, countedOn: '2026-05-06' })));
    expect(desk.workbook.tables.counts.where({ stage: 'given' })[0]?.countedOn).toBe('2026-05-04');
  });

  test.each([
    ['half taken', { given: 12, taken: 6 }, []],
    ['few of few cells', { given: 7, taken: 1 }, []],
    ['few of eight cells', { given: 8, taken: 3 }, ['low-take']],
    ['taken without given', { taken: 1 }, []],
    ['given without taken', { given: 12 }, []],
  ] as const)('a take is named as low only when it is, with enough cells: %s', (_what, changes, kinds) => {
    const desk = aDeskWithBatch();
    const { notices } = mustOk(recordBarCounts(desk, aRow(desk, { ...changes, countedOn: '2026-05-14' })));
    expect(notices.map((notice) => notice.kind)).toEqual(kinds);
  });

  test('keeps a low take and says so, and keeps a day to come', () => {
    const desk = aDeskWithBatch('2026-05-08');
    const { notices } = mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 3 })));
    expect(notices).toEqual([
      { kind: 'low-take', field: 'taken', given: 12, taken: 3 },
      { kind: 'day-in-future', field: 'countedOn', day: '2026-05-09' },
    ]);
  });
});
