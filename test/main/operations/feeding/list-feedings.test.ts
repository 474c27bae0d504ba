import { expect, test } from 'vitest';
import { listFeedings } from '../../../../main/operations/feeding/list-feedings.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill } from '../../../builders/desk.ts';
import { aFeeding } from '../../../builders/feeding.ts';
import { aBox } from '../../../builders/mating-box.ts';

test('a hive and a box each have their own, the latest first', () => {
  const desk = aDesk();
  fill(desk, ({ colonies, boxes, feedings }) => {
    colonies.insert(aColony());
    boxes.insert(aBox());
    feedings.insert(aFeeding({ id: 'old', fedOn: '2025-05-14' }));
    feedings.insert(aFeeding({ id: 'new' }));
    feedings.insert(aFeeding({ id: 'box', colonyId: null, boxId: 'box-1' }));
  });
  const ids = (place: 'hive' | 'box', id: string) => listFeedings(desk, { place, id }).map((one) => one.id);
  expect(ids('hive', 'colony-1')).toEqual(['new', 'old']);
  expect(ids('box', 'box-1')).toEqual(['box']);
  expect(ids('box', 'box-9')).toEqual([]);
});
