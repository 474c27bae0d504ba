import { describe, expect, test } from 'vitest';
import { cellSpread, spareCells } from '../../../../main/engine/boxes/cell-spread.ts';

const cells = (yard: string | null, mother: string | null, count: number) =>
  Array.from({ length: count }, () => ({ yard, mother }));

describe('where the cells of a mother stand', () => {
  test('yard by yard, most of them first, what is not named last', () => {
    const boxed = [...cells('Orchard', 'H03', 2), ...cells('Orchard', 'H07', 4), ...cells(null, null, 1)];
    expect(cellSpread('H03', boxed, ['Heath', 'Heath', 'Orchard']).yards).toEqual([
      { yard: 'Heath', freeBoxes: 2, mothers: [] },
      {
        ...{ yard: 'Orchard', freeBoxes: 1 },
        mothers: [
          { mother: 'H07', cells: 4 },
          { mother: 'H03', cells: 2 },
        ],
      },
      { yard: null, freeBoxes: 0, mothers: [{ mother: null, cells: 1 }] },
    ]);
  });

  test.each([
    ['all in one of two yards', 'H03', cells('Orchard', 'H03', 3), ['Heath'], 'Orchard'],
    ['all in the only yard', 'H03', cells('Orchard', 'H03', 3), ['Orchard'], null],
    ['in two yards', 'H03', [...cells('Orchard', 'H03', 3), ...cells('Heath', 'H03', 1)], [], null],
    ['none yet', 'H03', cells('Orchard', 'H07', 3), ['Heath'], null],
    ['of a mother who was not said', null, cells('Orchard', null, 3), ['Heath'], null],
  ])('%s', (_what, mother, boxed, free, allIn) => {
    expect(cellSpread(mother, boxed, free).allIn).toBe(allIn);
  });
});

test('a tenth to a fifth of the sealed cells is kept in hand, a part of a cell being a whole one', () => {
  // Ten to twenty of a hundred: common practice, no source.
  expect(spareCells(20)).toEqual({ from: 2, to: 4 });
  expect(spareCells(27)).toEqual({ from: 3, to: 6 });
  expect(spareCells(1)).toEqual({ from: 1, to: 1 });
  expect(spareCells(0)).toBeNull();
  expect(spareCells(null)).toBeNull();
});
