import { expect, test } from 'vitest';
import { retireBox } from '../../../../main/operations/boxes/retire-box.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

test('takes an empty box out of use and keeps what happened in it', () => {
  const desk = aDeskWithBoxes();
  mustOk(retireBox(desk, { boxId: 'box-9', retiredOn: '2026-05-14' }));
  expect(desk.workbook.tables.boxes.get('box-9')?.retiredOn).toBe('2026-05-14');
});

test('refuses a box that holds a cell, or is gone', () => {
  const desk = aDeskWithBoxes();
  expect(refusalOf(retireBox(desk, { boxId: 'box-1', retiredOn: '2026-05-14' }))).toMatchObject({
    kind: 'box-holds-a-cell',
    box: 'K01',
  });
  expect(desk.workbook.tables.boxes.get('box-1')?.retiredOn).toBeNull();
  expect(refusalOf(retireBox(desk, { boxId: 'gone', retiredOn: '2026-05-14' }))).toMatchObject({
    kind: 'box-not-found',
  });
});
