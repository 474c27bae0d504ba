import { expect, test } from 'vitest';
import { getQueen } from '../../../../main/operations/queens/get-queen.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { recordFeedback } from '../../../../main/operations/queens/record-feedback.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

const brought = { place: 'in-hive', way: 'direct', goneTo: null, price: null, note: null } as const;

/** 25-001 headed H03 when the larvae of batch 26-01 were given on 4 May; 26-001 is of that batch. */
function aDeskWithFamily() {
  const desk = aDeskWithBoxes('2026-06-10');
  fill(desk, ({ queens }) => {
    queens.insert(aQueen({ id: 'grand', number: '24-001', bornIn: 2024, motherLine: 'Anna', place: 'dead' }));
    queens.insert(aQueen({ id: 'mother', number: '25-001', bornIn: 2025, motherId: 'grand', place: 'in-hive' }));
    queens.insert(aQueen({ id: 'queen', batchId: 'batch-1', breederId: 'h03', provedOn: '2026-06-06' }));
  });
  mustOk(moveQueen(desk, { id: 'm', queenId: 'mother', movedOn: '2025-08-01', colonyId: 'h03', ...brought }));
  return desk;
}

test('tells mothers back in time, daughters and the batches raised from her', () => {
  const desk = aDeskWithFamily();
  const queen = getQueen(desk, { queenId: 'queen' });
  expect(queen?.mother).toEqual({ kind: 'queen', id: 'mother', name: '25-001', line: null });
  expect(queen?.mothers.map((one) => one.name)).toEqual(['25-001', '24-001']);
  const mother = getQueen(desk, { queenId: 'mother' });
  expect(mother?.daughters.map((one) => one.name)).toEqual(['26-001']);
  expect(mother?.batches).toEqual([{ id: 'batch-1', code: '26-01' }]);
  expect(mother?.hive).toBe('H03');
});

test('tells her story newest first, open checks before answered ones, and earlier receivers', () => {
  const desk = aDeskWithFamily();
  mustOk(moveQueen(desk, { id: 'm1', queenId: 'queen', movedOn: '2026-06-08', colonyId: 'h12', ...brought }));
  const sold = { ...brought, place: 'sold', way: null, colonyId: null, goneTo: 'Ines' } as const;
  mustOk(moveQueen(desk, { id: 'm2', queenId: 'mother', movedOn: '2026-06-09', ...sold }));
  const told = { queenId: 'queen', toldBy: null, outcome: 'lays-well', note: null } as const;
  mustOk(recordFeedback(desk, { id: 'f1', toldOn: '2026-07-01', ...told }));
  mustOk(recordFeedback(desk, { id: 'f2', toldOn: '2026-08-01', ...told, outcome: 'superseded' }));
  const queen = getQueen(desk, { queenId: 'queen' });
  expect(queen?.moves.map(({ movedOn, hive }) => [movedOn, hive])).toEqual([['2026-06-08', 'H12']]);
  expect(queen?.feedback.map((one) => one.outcome)).toEqual(['superseded', 'lays-well']);
  expect(queen?.followUps.map((one) => [one.what, one.hive?.code])).toEqual([
    ['check-eggs', 'H12'],
    ['check-queen', 'H12'],
  ]);
  expect(queen?.receivers).toEqual(['Ines']);
  expect(getQueen(desk, { queenId: 'gone' })).toBeNull();
});
