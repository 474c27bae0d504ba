import { expect, test } from 'vitest';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { retireBox } from '../../../../main/operations/boxes/retire-box.ts';
import { boardColumns, placeLines } from '../../../../renderer/features/boxes/boxes-of-state.ts';
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

test('as they stand, boxes are cut into lines of as many as fit, under the names of their yard and row', () => {
  const [first, second, third, fourth] = listBoxes(aDeskWithBoxes());
  if (!first || !second || !third || !fourth) throw new Error('boxes are missing');
  const boxes = [
    { ...first, yard: 'Mill', row: 'fence' },
    { ...second, yard: 'Mill', row: 'fence' },
    { ...third, yard: 'Mill', row: 'fence' },
    { ...fourth, yard: null, row: null },
  ];
  const lines = placeLines(boxes, 2, { yard: 'no yard', row: 'no row' });
  expect(lines.map((line) => (line.kind === 'tiles' ? line.boxes.map(({ code }) => code) : line.name))).toEqual([
    'Mill',
    'fence',
    ['K01', 'K02'],
    ['K03'],
    'no yard',
    'no row',
    ['K04'],
  ]);
});
