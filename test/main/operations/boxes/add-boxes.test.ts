import { expect, test } from 'vitest';
import { addBoxes } from '../../../../main/operations/boxes/add-boxes.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

type Adding = Parameters<typeof addBoxes>[1];
const boxes = (changes: Partial<Adding> = {}): Adding => ({
  ids: ['a', 'b', 'c'],
  codes: 'K01-K03',
  yardId: null,
  row: 'fence',
  boxType: 'mini',
  ...changes,
});

test('adds a span in walking order, after those there are', () => {
  const desk = aDesk();
  mustOk(addBoxes(desk, boxes()));
  mustOk(addBoxes(desk, boxes({ ids: ['d'], codes: 'M1' })));
  expect(desk.workbook.tables.boxes.all().map(({ id, code, walkOrder }) => [id, code, walkOrder])).toEqual([
    ['a', 'K01', 1],
    ['b', 'K02', 2],
    ['c', 'K03', 3],
    ['d', 'M1', 4],
  ]);
});

test.each([
  [
    'codes that cannot be read',
    { codes: 'K03-K01' },
    { kind: 'box-codes-unreadable', field: 'codes', text: 'K03-K01' },
  ],
  [
    'a code that is taken',
    { ids: ['x', 'y'], codes: 'K09, K02' },
    { kind: 'box-code-taken', field: 'codes', code: 'K02' },
  ],
  ['a yard that is gone', { ids: ['x'], codes: 'K09', yardId: 'gone' }, { kind: 'yard-not-found', field: 'yardId' }],
  ['too few ids', { ids: ['x'], codes: 'K10-K12' }, { kind: 'wrong-number-of-ids', needed: 3 }],
] as const)('refuses %s and adds none', (_what, changes, refusal) => {
  const desk = aDesk();
  mustOk(addBoxes(desk, boxes()));
  expect(refusalOf(addBoxes(desk, boxes(changes as Partial<Adding>)))).toEqual(refusal);
  expect(desk.workbook.tables.boxes.all()).toHaveLength(3);
});
