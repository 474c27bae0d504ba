import { expect, test } from 'vitest';
import { removeWish } from '../../../../main/operations/season/remove-wish.ts';
import { saveWish } from '../../../../main/operations/season/save-wish.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

test('a wish is taken out, and comes back with undo', () => {
  const desk = aDesk();
  const wish = { id: 'wish-1', forWhom: null, queens: 2, wantedOn: '2026-06-20', settledOn: null, note: 'for H03' };
  mustOk(saveWish(desk, wish));
  mustOk(removeWish(desk, { wishId: 'wish-1' }));
  expect(desk.workbook.tables.wishes.all()).toEqual([]);
  mustOk(desk.workbook.undo());
  expect(desk.workbook.tables.wishes.all()).toEqual([wish]);
  expect(refusalOf(removeWish(desk, { wishId: 'other' }))).toMatchObject({ kind: 'wish-missing', field: 'wishId' });
});
