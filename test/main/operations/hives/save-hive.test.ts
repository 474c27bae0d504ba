import { expect, test } from 'vitest';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

test('writes a hive and changes it', () => {
  const desk = aDesk();
  mustOk(saveHive(desk, aColony()));
  mustOk(saveHive(desk, aColony({ motherLine: 'Anna' })));
  expect(desk.workbook.tables.colonies.all()).toEqual([aColony({ motherLine: 'Anna' })]);
});

test('refuses a code in use and a yard that is gone', () => {
  const desk = aDesk();
  mustOk(saveHive(desk, aColony()));
  expect(refusalOf(saveHive(desk, aColony({ id: 'other' })))).toEqual({
    kind: 'hive-code-in-use',
    field: 'code',
    code: 'H01',
  });
  expect(refusalOf(saveHive(desk, aColony({ yardId: 'gone' })))).toEqual({ kind: 'yard-not-found', field: 'yardId' });
  expect(desk.workbook.tables.colonies.all()).toEqual([aColony()]);
});
