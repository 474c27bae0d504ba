import { expect, test } from 'vitest';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { retireBox } from '../../../../main/operations/boxes/retire-box.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, onDay } from '../../../builders/running-batch.ts';

test('tells the state of each box, days since emergence, and until when it is hands off', () => {
  const desk = aDeskWithBoxes();
  const lines = listBoxes(desk);
  expect(lines.map((line) => line.state)).toEqual([...Array(6).fill('cell'), ...Array(4).fill('free')]);
  expect(lines[0]).toMatchObject({
    code: 'K01',
    batch: '26-01',
    breeder: 'H03',
    emergenceExpected: '2026-05-16',
    daysSinceEmergence: -2,
    handsOffUntil: null,
  });
  const later = listBoxes(onDay(desk, '2026-05-20'))[0];
  // Mating flights begin some 5 days after emergence [Burley 2007]; the boxes are left alone from day 3.
  expect(later).toMatchObject({ state: 'virgin', daysSinceEmergence: 4, handsOffUntil: '2026-05-26' });
});

test('says when workers may begin to lay long before anything is proposed, and not where there is brood', () => {
  const desk = onDay(aDeskWithBoxes(), '2026-05-20');
  const span = (line = listBoxes(desk)[0]) => [line?.layingWorkersFrom, line?.layingWorkersLatest, line?.proposal];
  // The cell came on 14 May; three to four weeks without brood (from memory, no source seen).
  expect(span()).toEqual(['2026-06-04', '2026-06-11', null]);
  const look = { lookedOn: '2026-05-28', strength: null, food: null, note: null, queen: null };
  mustOk(recordLook(onDay(desk, '2026-05-28'), { id: 'look-1', boxId: 'box-1', result: 'laying', ...look }));
  expect(span(listBoxes(onDay(desk, '2026-05-28'))[0])).toEqual([null, null, null]);
});

test('names the hive a cell came from and the queen in a box by their ids, for links', () => {
  const desk = onDay(aDeskWithBoxes(), '2026-05-28');
  const look = { lookedOn: '2026-05-28', strength: null, food: null, note: null };
  const queen = { id: 'queen-1', number: '26-001' };
  mustOk(recordLook(desk, { id: 'look-1', boxId: 'box-1', result: 'laying', ...look, queen }));
  const breeder = desk.workbook.tables.colonies.where({ code: 'H03' })[0];
  const [held, , , , , , free] = listBoxes(desk);
  expect(held).toMatchObject({ breederId: breeder?.id, queenId: 'queen-1', queenNumber: '26-001' });
  expect(free).toMatchObject({ breederId: null, queenId: null });
});

test('puts boxes out of use last', () => {
  const desk = aDeskWithBoxes();
  mustOk(retireBox(desk, { boxId: 'box-7', retiredOn: '2026-05-14' }));
  expect(listBoxes(desk).at(-1)).toMatchObject({ code: 'K07', state: 'retired' });
});
