import { expect, test } from 'vitest';
import { previewBatch } from '../../../../main/operations/batches/preview-batch.ts';
import { saveMethodCopy } from '../../../../main/operations/methods/save-method-copy.ts';
import type { MethodCopy } from '../../../../shared/model/method-copy.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aStart, refusalOf } from '../../../builders/running-batch.ts';

const aCopy = (changes: Partial<MethodCopy> = {}): MethodCopy => ({
  id: 'own',
  origin: 'cut-comb-edge',
  name: 'Mine',
  changes: [{ step: 'count-taken', earliestDay: 2, expectedDay: 2, latestDay: 3, title: null, note: null }],
  ...changes,
});

test('a batch by a copy follows its days; the last safe day stays', () => {
  const desk = aDesk({ today: '2026-05-04' });
  const plain = mustOk(previewBatch(desk, aStart()));
  mustOk(saveMethodCopy(desk, aCopy()));
  const own = mustOk(previewBatch(desk, aStart({ methodCopyId: 'own' })));
  expect(own.lines.find((line) => line.step === 'count-taken')?.expected).toBe('2026-05-06');
  expect(own.placeDeadline).toBe(plain.placeDeadline);
});

test('a copy keeps its origin for good', () => {
  const desk = aDesk();
  mustOk(saveMethodCopy(desk, aCopy()));
  expect(mustOk(saveMethodCopy(desk, aCopy({ origin: 'flat-comb', name: 'Renamed' })))).toMatchObject({
    origin: 'cut-comb-edge',
    name: 'Renamed',
  });
});

test('refuses a window turned round and a name in use, and writes nothing', () => {
  const desk = aDesk();
  const turned = {
    step: 'count-taken',
    earliestDay: 3,
    expectedDay: 2,
    latestDay: 1,
    title: null,
    note: null,
  } as const;
  expect(refusalOf(saveMethodCopy(desk, aCopy({ changes: [turned] })))).toMatchObject({
    kind: 'window-turned-round',
    field: 'changes',
    step: 'count-taken',
  });
  expect(desk.workbook.tables.methodCopies.all()).toEqual([]);
  mustOk(saveMethodCopy(desk, aCopy()));
  expect(refusalOf(saveMethodCopy(desk, aCopy({ id: 'second' })))).toEqual({
    kind: 'method-name-in-use',
    field: 'name',
    name: 'Mine',
  });
});

test('a name and a note of one’s own leave the days as they are built in', () => {
  const desk = aDesk({ today: '2026-05-04' });
  const plain = mustOk(previewBatch(desk, aStart()));
  const named = { earliestDay: null, expectedDay: null, latestDay: null, title: 'Queens!', note: 'Look at noon.' };
  mustOk(saveMethodCopy(desk, aCopy({ changes: [{ step: 'emergence', ...named }] })));
  const own = mustOk(previewBatch(desk, aStart({ methodCopyId: 'own' })));
  expect(own.lines.map(({ own: _, ...line }) => line)).toEqual(plain.lines.map(({ own: _, ...line }) => line));
  const words = (lines: typeof own.lines, step: string) => lines.find((line) => line.step === step)?.own;
  expect(words(own.lines, 'emergence')).toMatchObject({ title: 'Queens!', note: 'Look at noon.' });
  expect(words(own.lines, 'first-look')).toEqual({ title: null, note: null });
  expect(words(plain.lines, 'emergence')).toEqual({ title: null, note: null });
});
