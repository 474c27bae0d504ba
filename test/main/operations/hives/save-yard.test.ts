import { expect, test } from 'vitest';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

test('writes a yard, renames it, and refuses a second of the same name', () => {
  const desk = aDesk();
  mustOk(saveYard(desk, aYard({ name: 'Orchard' })));
  mustOk(saveYard(desk, aYard({ name: 'Old orchard' })));
  expect(desk.workbook.tables.yards.all().map((yard) => yard.name)).toEqual(['Old orchard']);
  expect(refusalOf(saveYard(desk, aYard({ id: 'other', name: 'Old orchard' })))).toEqual({
    kind: 'yard-name-in-use',
    field: 'name',
    name: 'Old orchard',
  });
  expect(desk.workbook.tables.yards.all()).toHaveLength(1);
});
