import { expect, test } from 'vitest';
import { compareDots } from '../../../renderer/charts/compare-layout.ts';
import type { ComparedBatch, CompareRow, RateFigure } from '../../../shared/contract/season.ts';

const NONE: RateFigure = { successes: 0, of: 0, batches: 0, rate: null, interval: null };
const figure = (successes: number, of: number, lower: number, upper: number): RateFigure => ({
  successes,
  of,
  batches: 2,
  rate: successes / of,
  interval: { lower, upper },
});
const aRow = (label: string, take: RateFigure): CompareRow => ({
  groupId: label,
  label,
  parts: [{ factor: 'builder', id: label, label }],
  batches: 2,
  rates: { take, sealing: NONE, emergence: NONE, mating: NONE, through: NONE },
});
const BEHIND: readonly ComparedBatch[] = [
  {
    groupId: 'B',
    batchId: 'a',
    batch: '26-01',
    counts: [
      { stage: 'take', successes: 5, of: 10 },
      { stage: 'mating', successes: 1, of: 2 },
    ],
  },
  { groupId: 'B', batchId: 'b', batch: '26-02', counts: [] },
];
const dots = (...rows: readonly CompareRow[]) => compareDots(rows, 'take', (row) => row.label, [], BEHIND);

test('draws the best first, in per cent, with its own batches as ticks; a group without figures is not drawn', () => {
  const drawn = dots(aRow('A', figure(6, 10, 0.4, 0.8)), aRow('B', figure(9, 10, 0.7, 0.98)), aRow('C', NONE));
  expect(drawn.map(({ label, percent, of, batches }) => [label, percent, of, batches])).toEqual([
    ['B', 90, 10, 2],
    ['A', 60, 10, 2],
  ]);
  expect(drawn.map(({ ticks }) => ticks)).toEqual([[{ batch: '26-01', percent: 50, of: 10 }], []]);
});

test('takes dot and range from the weighed stage where there is one, and keeps the counts', () => {
  const weighed = [{ groupId: 'A', label: 'A', batches: 2, mean: 0.7, lower: 0.5, upper: 0.85, probabilityBest: 0.9 }];
  const [dot] = compareDots([aRow('A', figure(6, 10, 0.4, 0.8))], 'take', (row) => row.label, weighed);
  expect(dot).toMatchObject({ percent: 70, lower: 50, upper: 85, successes: 6, of: 10 });
});
