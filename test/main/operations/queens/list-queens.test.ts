import { expect, test } from 'vitest';
import { listQueens } from '../../../../main/operations/queens/list-queens.ts';
import { aDesk, fill } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

test('lists the newest number first, with year colour and where she is', () => {
  const desk = aDeskWithBoxes();
  fill(desk, ({ queens }) => {
    queens.insert(aQueen({ batchId: 'batch-1', breederId: 'h03', boxId: 'box-1', placementId: 'placement-1' }));
    queens.insert(aQueen({ id: 'old', number: '25-010', bornIn: 2025, place: 'in-hive', colonyId: 'h12' }));
  });
  const lines = listQueens(desk);
  // International marking code: 2026 white, 2025 blue (tbbk.co.uk and seven more pages; no written standard found).
  expect(
    lines.map(({ queen, yearColour, batch, breeder, box, hive, bornOn }) => [
      queen.number,
      yearColour,
      batch,
      breeder,
      box,
      hive,
      bornOn,
    ]),
  ).toEqual([
    ['26-001', 'white', '26-01', 'H03', 'K01', null, '2026-05-16'],
    ['25-010', 'blue', null, null, null, 'H12', null],
  ]);
  expect(listQueens(aDesk())).toEqual([]);
});
