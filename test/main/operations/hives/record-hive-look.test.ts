import { expect, test } from 'vitest';
import { recordHiveLook } from '../../../../main/operations/hives/record-hive-look.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aHiveLook } from '../../../builders/mating-box.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

test('writes a look and corrects it; refuses a hive that is gone', () => {
  const desk = aDesk();
  fill(desk, ({ colonies }) => colonies.insert(aColony()));
  mustOk(recordHiveLook(desk, aHiveLook()));
  mustOk(recordHiveLook(desk, aHiveLook({ strength: 4 })));
  expect(desk.workbook.tables.hiveLooks.all()).toEqual([aHiveLook({ strength: 4 })]);
  expect(refusalOf(recordHiveLook(desk, aHiveLook({ id: 'x', colonyId: 'gone' })))).toEqual({
    kind: 'hive-missing',
    field: 'colonyId',
  });
});
