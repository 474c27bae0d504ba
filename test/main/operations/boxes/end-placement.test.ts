import { expect, test } from 'vitest';
import { acceptProposal } from '../../../../main/operations/boxes/accept-proposal.ts';
import { endPlacement } from '../../../../main/operations/boxes/end-placement.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

test('frees the box, completes the story and takes the queen out of it', () => {
  const desk = aDeskWithBoxes('2026-06-01');
  const queen = { id: 'q', number: '26-001' };
  mustOk(
    recordLook(desk, {
      id: 'l',
      boxId: 'box-1',
      lookedOn: '2026-05-28',
      result: 'laying',
      strength: null,
      food: null,
      note: null,
      queen,
    }),
  );
  const { boxes } = mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-06-01', reason: 'caught' }));
  expect(boxes[0]).toMatchObject({ code: 'K01', state: 'free' });
  expect(desk.workbook.tables.queens.get('q')).toMatchObject({ place: 'caged', boxId: null });
  // Caught while laying counts as mated, since she was taken before sealed brood could be seen.
  expect(desk.workbook.tables.tallies.get('batch-1')).toMatchObject({ emerged: 1, matingKnown: 1, proved: 1 });
});

test('refuses a placement that is gone and a day before the cell was put in', () => {
  const desk = aDeskWithBoxes();
  expect(refusalOf(endPlacement(desk, { placementId: 'gone', endedOn: '2026-06-01', reason: 'failed' }))).toEqual({
    kind: 'placement-not-found',
  });
  expect(
    refusalOf(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-05-01', reason: 'failed' })),
  ).toEqual({ kind: 'look-before-placing', field: 'endedOn', placedOn: '2026-05-14' });
  expect(desk.workbook.tables.placements.get('placement-1')?.endedOn).toBeNull();
  mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-05-14', reason: 'failed' }));
});

test.each([
  ['caught', 'caged'],
  ['failed', 'lost'],
  ['united', 'in-hive'],
  ['shaken-out', 'lost'],
  ['cell-taken-back', 'unknown'],
  ['other', 'unknown'],
] as const)('%s: the queen with a number is %s', (reason, place) => {
  const desk = aDeskWithBoxes('2026-06-01');
  fill(desk, ({ queens }) => queens.insert(aQueen({ placementId: 'placement-1', boxId: 'box-1' })));
  mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-06-01', reason }));
  expect(desk.workbook.tables.queens.get('queen-1')).toMatchObject({ place, boxId: null });
  const moves = desk.workbook.tables.queenMoves.all().map((move) => [move.movedOn, move.place]);
  expect(moves).toEqual([['2026-06-01', place]]);
});

test('a box that is freed waits for no other look', () => {
  const desk = aDeskWithBoxes('2026-06-01');
  const look = { id: 'l', boxId: 'box-1', lookedOn: '2026-05-28', strength: null, food: null, note: null, queen: null };
  mustOk(recordLook(desk, { ...look, result: 'virgin' }));
  const again = { boxId: 'box-1', placementId: 'placement-1', kind: 'look-again', on: '2026-06-01' } as const;
  mustOk(acceptProposal(desk, again));
  expect(desk.workbook.tables.followUps.all()).toHaveLength(1);
  mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-06-01', reason: 'failed' }));
  expect(desk.workbook.tables.followUps.all()).toEqual([]);
});

test('a queen united with a hive is in that hive, and its checks follow; a hive that is gone is refused', () => {
  const desk = aDeskWithBoxes('2026-06-01');
  const { tables } = desk.workbook;
  fill(desk, ({ queens }) => queens.insert(aQueen({ placementId: 'placement-1', boxId: 'box-1' })));
  const united = { placementId: 'placement-1', endedOn: '2026-06-01', reason: 'united' } as const;
  expect(refusalOf(endPlacement(desk, { ...united, unitedWith: 'gone' }))).toEqual({
    kind: 'hive-missing',
    field: 'colonyId',
  });
  expect(tables.placements.get('placement-1')?.endedOn).toBeNull();
  mustOk(endPlacement(desk, { ...united, unitedWith: 'h12' }));
  expect(tables.queens.get('queen-1')).toMatchObject({ place: 'in-hive', colonyId: 'h12', boxId: null });
  expect(tables.followUps.all().length).toBeGreaterThan(0);
  expect(tables.followUps.all().every((check) => check.colonyId === 'h12')).toBe(true);
});
