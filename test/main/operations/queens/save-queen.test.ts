import { expect, test } from 'vitest';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { saveQueen } from '../../../../main/operations/queens/save-queen.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

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

test('a place said in the form is kept as a move: when she was marked if she is new, today if it changed', () => {
  const desk = aDesk({ today: '2026-07-01' });
  mustOk(saveQueen(desk, aQueen({ markedOn: '2026-06-06', place: 'caged' })));
  mustOk(saveQueen(desk, aQueen({ markedOn: '2026-06-06', place: 'caged', note: 'quick on her feet' })));
  mustOk(saveQueen(desk, aQueen({ markedOn: '2026-06-06', place: 'sold', goneTo: 'Ines' })));
  expect(desk.workbook.tables.queenMoves.all().map(({ movedOn, place, goneTo }) => [movedOn, place, goneTo])).toEqual([
    ['2026-06-06', 'caged', null],
    ['2026-07-01', 'sold', 'Ines'],
  ]);
});

test('refuses a mother that is gone or descends from her', () => {
  const desk = aDesk();
  mustOk(saveQueen(desk, aQueen()));
  mustOk(saveQueen(desk, aQueen({ id: 'daughter', number: '26-002', motherId: 'queen-1' })));
  const circle = aQueen({ motherId: 'daughter' });
  expect(refusalOf(saveQueen(desk, circle))).toEqual({
    kind: 'queen-own-ancestor',
    field: 'motherId',
    number: '26-002',
  });
  expect(refusalOf(saveQueen(desk, aQueen({ motherId: 'gone' })))).toEqual({ kind: 'queen-missing' });
  expect(desk.workbook.tables.queens.get('queen-1')?.motherId).toBeNull();
});

test('a queen who is said to be elsewhere frees her box, and is not in it any more', () => {
  const desk = aDeskWithBoxes('2026-06-06');
  const { tables } = desk.workbook;
  const queen = aQueen({ placementId: 'placement-1', batchId: 'batch-1', boxId: 'box-1', place: 'in-box' });
  fill(desk, ({ queens }) => queens.insert(queen));
  mustOk(saveQueen(desk, { ...queen, note: 'quick on her feet' }));
  expect(tables.placements.get('placement-1')?.endedOn).toBeNull();
  mustOk(saveQueen(desk, { ...queen, place: 'sold', goneTo: 'Ines' }));
  expect(tables.placements.get('placement-1')).toMatchObject({ endedOn: '2026-06-06', endReason: 'caught' });
  expect(tables.queens.get(queen.id)).toMatchObject({ place: 'sold', boxId: null });
  expect(listBoxes(desk)[0]).toMatchObject({ code: 'K01', state: 'free', queenNumber: null });
});
