import { expect, test } from 'vitest';
import { saveQueen } from '../../../../main/operations/queens/save-queen.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

test('writes a queen and changes her', () => {
  const desk = aDesk();
  mustOk(saveQueen(desk, aQueen()));
  mustOk(saveQueen(desk, aQueen({ place: 'given', goneTo: 'Club' })));
  expect(desk.workbook.tables.queens.all()).toEqual([aQueen({ place: 'given', goneTo: 'Club' })]);
});

test('refuses a number twice and days turned round', () => {
  const desk = aDesk();
  mustOk(saveQueen(desk, aQueen()));
  expect(refusalOf(saveQueen(desk, aQueen({ id: 'other' })))).toEqual({
    kind: 'queen-number-taken',
    field: 'number',
    number: '26-001',
  });
  const turned = aQueen({ firstEggsOn: '2026-06-10', provedOn: '2026-06-01' });
  expect(refusalOf(saveQueen(desk, turned))).toEqual({
    kind: 'queen-dates-turned-round',
    field: 'provedOn',
    firstEggsOn: '2026-06-10',
    provedOn: '2026-06-01',
  });
  expect(desk.workbook.tables.queens.all()).toEqual([aQueen()]);
});

test.each([
  ['2026-06-10', '2026-06-10'],
  ['2026-06-10', null],
  [null, '2026-06-10'],
  [null, null],
])('keeps first eggs on %s and proved on %s', (firstEggsOn, provedOn) => {
  mustOk(saveQueen(aDesk(), aQueen({ firstEggsOn, provedOn })));
});
