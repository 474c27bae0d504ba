import { expect, test } from 'vitest';
import { inStockOrder, nextOrder } from '../../../../renderer/features/hives/stock-order.ts';
import type { StockLine, TraitFigure } from '../../../../shared/contract/stock.ts';

const figure = (value: number | null, enough = true): TraitFigure => ({ n: 4, value, enough });
const line = (code: string, gentleness: TraitFigure, mites = figure(null, false)): StockLine => ({
  id: code,
  code,
  name: null,
  yard: null,
  motherLine: null,
  breeder: false,
  queen: null,
  kin: [],
  traits: { gentleness, calmness: figure(null, false), swarming: figure(null, false) },
  pin: figure(null, false),
  strictlyHygienic: null,
  mites,
  honey: null,
});
const codes = (lines: readonly StockLine[]) => lines.map((one) => one.code).join(' ');

test('best first, turned round on the second press; too few scores stand last either way', () => {
  const lines = [
    line('H01', figure(4, false)),
    line('H02', figure(2)),
    line('H03', figure(3.5)),
    line('H04', figure(null, false)),
  ];
  const best = nextOrder({ by: 'hive', turned: false }, 'gentleness');
  expect(codes(inStockOrder(lines, best))).toBe('H03 H02 H01 H04');
  expect(codes(inStockOrder(lines, nextOrder(best, 'gentleness')))).toBe('H02 H03 H01 H04');
});

test('fewest mites are best, and codes go by their number', () => {
  const lines = [line('H10', figure(4), figure(3)), line('H9', figure(4), figure(0.5))];
  expect(codes(inStockOrder(lines, { by: 'mites', turned: false }))).toBe('H9 H10');
  expect(codes(inStockOrder(lines, { by: 'hive', turned: false }))).toBe('H9 H10');
});
