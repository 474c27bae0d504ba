import { expect, test } from 'vitest';
import { spreadCells } from '../../../../main/engine/calendar/spread-cells.ts';

test('cells are spread evenly, and none is lost', () => {
  expect(spreadCells(40, 2)).toEqual([20, 20]);
  expect(spreadCells(41, 3)).toEqual([14, 14, 13]);
  expect(spreadCells(2, 3)).toEqual([1, 1, 0]);
  expect(spreadCells(5, 0)).toEqual([]);
});
