import { expect, test } from 'vitest';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
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

test('puts boxes out of use last', () => {
  const desk = aDeskWithBoxes();
  mustOk(retireBox(desk, { boxId: 'box-7', retiredOn: '2026-05-14' }));
  expect(listBoxes(desk).at(-1)).toMatchObject({ code: 'K07', state: 'retired' });
});
