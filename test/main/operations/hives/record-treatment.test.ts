import { expect, test } from 'vitest';
import { recordTreatment } from '../../../../main/operations/hives/record-treatment.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';
import { aTreatment } from '../../../builders/stock.ts';

test('writes a treatment down as it was done, and corrects it', () => {
  const desk = aDesk();
  fill(desk, ({ colonies }) => colonies.insert(aColony()));
  mustOk(recordTreatment(desk, aTreatment()));
  mustOk(recordTreatment(desk, aTreatment({ toOn: '2026-08-01', note: 'one day' })));
  expect(desk.workbook.tables.treatments.all()).toEqual([aTreatment({ toOn: '2026-08-01', note: 'one day' })]);
});

test('refuses an end before the beginning and a hive that is gone', () => {
  const desk = aDesk();
  expect(refusalOf(recordTreatment(desk, aTreatment()))).toEqual({ kind: 'hive-missing', field: 'colonyId' });
  fill(desk, ({ colonies }) => colonies.insert(aColony()));
  expect(refusalOf(recordTreatment(desk, aTreatment({ toOn: '2026-07-31' })))).toEqual({
    kind: 'treatment-turned-round',
    field: 'toOn',
    fromOn: '2026-08-01',
  });
  expect(desk.workbook.tables.treatments.all()).toEqual([]);
});
