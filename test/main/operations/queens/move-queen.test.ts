import { describe, expect, test } from 'vitest';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import type { QueenMove } from '../../../../shared/model/queen-story.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

/** Cells went into boxes on 14 May, queens emerge on 16 May; 26-001 was proved in K01 on 6 June. */
function aDeskWithQueen(today = '2026-06-10') {
  const desk = aDeskWithBoxes(today);
  const queen = { id: 'q', number: '26-001' };
  const look = { id: 'l', boxId: 'box-1', lookedOn: '2026-06-06', strength: null, food: null, note: null, queen };
  mustOk(recordLook(desk, { ...look, result: 'proved' }));
  return desk;
}
const aMove = (changes: Partial<QueenMove> = {}): QueenMove => ({
  id: 'm',
  queenId: 'q',
  movedOn: '2026-06-10',
  place: 'in-hive',
  colonyId: 'h12',
  goneTo: null,
  way: 'candy-cage',
  price: null,
  note: null,
  ...changes,
});

describe('a queen brought to a hive', () => {
  test('leaves her box free, counts as mated, and is checked from then on', () => {
    const desk = aDeskWithQueen();
    const { line, notices } = mustOk(moveQueen(desk, aMove()));
    expect(line).toMatchObject({ hive: 'H12', box: null, queen: { place: 'in-hive', colonyId: 'h12' } });
    expect(notices).toEqual([]);
    expect(listBoxes(desk)[0]).toMatchObject({ code: 'K01', state: 'free', freeFrom: '2026-06-12' });
    expect(desk.workbook.tables.tallies.get('batch-1')).toMatchObject({ emerged: 1, proved: 1 });
    expect(desk.workbook.tables.followUps.all().map(({ what, dueOn, colonyId }) => [what, dueOn, colonyId])).toEqual([
      ['check-release', '2026-06-13', 'h12'],
      ['check-eggs', '2026-06-17', 'h12'],
      ['check-queen', '2026-07-08', 'h12'],
    ]);
  });

  test('a look that was wanted into her box again is dropped with her going', () => {
    const desk = aDeskWithQueen();
    const wanted = {
      id: 'f',
      what: 'look-again',
      dueOn: '2026-06-12',
      latestOn: '2026-06-15',
      boxId: 'box-1',
    } as const;
    const open = { queenId: null, colonyId: null, doneOn: null, answer: null, note: null };
    fill(desk, (tables) => tables.followUps.insert({ ...wanted, ...open }));
    mustOk(moveQueen(desk, aMove({ place: 'sold', colonyId: null, way: null })));
    expect(desk.workbook.tables.followUps.all()).toEqual([]);
  });

  test('her open checks go when she moves on; an answered one stays', () => {
    const desk = aDeskWithQueen();
    mustOk(moveQueen(desk, aMove()));
    mustOk(moveQueen(desk, aMove({ id: 'm2', movedOn: '2026-06-12', place: 'dead', colonyId: null, way: null })));
    expect(desk.workbook.tables.followUps.all()).toEqual([]);
    expect(desk.workbook.tables.queens.get('q')).toMatchObject({ place: 'dead', colonyId: null });
    expect(desk.workbook.tables.queenMoves.where({ queenId: 'q' })).toHaveLength(2);
  });

  test('a move typed later about an earlier day changes the story, not where she is', () => {
    const desk = aDeskWithQueen();
    mustOk(moveQueen(desk, aMove({ place: 'sold', goneTo: 'Ines', price: '40', colonyId: null, way: null })));
    mustOk(moveQueen(desk, aMove({ id: 'm2', movedOn: '2026-06-08', place: 'caged', colonyId: null, way: null })));
    expect(desk.workbook.tables.queens.get('q')).toMatchObject({ place: 'sold', goneTo: 'Ines' });
  });
});

test('a queen that died in her box was no success', () => {
  const desk = aDeskWithQueen();
  mustOk(moveQueen(desk, aMove({ place: 'lost', colonyId: null, way: null })));
  expect(desk.workbook.tables.placements.get('placement-1')).toMatchObject({
    endReason: 'failed',
    endedOn: '2026-06-10',
  });
});

test('says what is odd and keeps it: young, not proved, a hive with a queen, a day to come', () => {
  const desk = aDeskWithQueen('2026-06-01');
  // Queens taken at 21 to 28 days live better than younger ones (Rhodes, Somerville & Harden 2004).
  expect(mustOk(moveQueen(desk, aMove({ movedOn: '2026-06-05' }))).notices).toEqual([
    { kind: 'day-in-future', field: 'movedOn', day: '2026-06-05' },
    { kind: 'young-queen', queen: '26-001', days: 20 },
  ]);
  const queen = { id: 'q2', number: '26-002' };
  const look = { id: 'l2', boxId: 'box-2', lookedOn: '2026-05-30', strength: null, food: null, note: null, queen };
  mustOk(recordLook(desk, { ...look, result: 'laying' }));
  expect(mustOk(moveQueen(desk, aMove({ id: 'm2', queenId: 'q2', movedOn: '2026-06-06' }))).notices).toEqual([
    { kind: 'day-in-future', field: 'movedOn', day: '2026-06-06' },
    { kind: 'queen-not-proved', queen: '26-002' },
    { kind: 'hive-has-queen', hive: 'H12', queen: '26-001' },
  ]);
});

test('a queen that came out a day before she was expected may be given away that day', () => {
  const desk = aDeskWithQueen('2026-05-15');
  const away = aMove({ movedOn: '2026-05-15', place: 'given', colonyId: null, way: null });
  expect(mustOk(moveQueen(desk, away)).line.queen.place).toBe('given');
});

test('refuses a hive left out or gone, a day before any queen can be out, and a queen that is gone', () => {
  const desk = aDeskWithQueen();
  const refused = (changes: Partial<QueenMove>) => refusalOf(moveQueen(desk, aMove(changes)));
  expect(refused({ colonyId: null })).toEqual({ kind: 'hive-for-queen-needed', field: 'colonyId' });
  expect(refused({ colonyId: 'gone' })).toEqual({ kind: 'hive-missing', field: 'colonyId' });
  // Expected on 16 May, on the 15th at the soonest: the oldest larva and 15 days.
  expect(refused({ movedOn: '2026-05-14' })).toEqual({
    kind: 'queen-moved-before-birth',
    field: 'movedOn',
    bornOn: '2026-05-15',
  });
  expect(refused({ queenId: 'gone' })).toEqual({ kind: 'queen-missing' });
  expect(desk.workbook.tables.queenMoves.all()).toEqual([]);
});
