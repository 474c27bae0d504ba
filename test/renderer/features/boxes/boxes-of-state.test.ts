import { expect, test } from 'vitest';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { retireBox } from '../../../../main/operations/boxes/retire-box.ts';
import { boardColumns } from '../../../../renderer/features/boxes/boxes-of-state.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

test('every box in use stands in one column, in walking order, and empty columns stay', () => {
  const desk = aDeskWithBoxes();
  mustOk(retireBox(desk, { boxId: 'box-10', retiredOn: '2026-05-14' }));
  const columns = boardColumns(listBoxes(desk));
  expect(columns.map(({ state, boxes }) => [state, boxes.map((box) => box.code).join(' ')])).toEqual([
    ['free', 'K07 K08 K09'],
    ['cell', 'K01 K02 K03 K04 K05 K06'],
    ['virgin', ''],
    ['laying', ''],
    ['proved', ''],
    ['failed', ''],
  ]);
});
