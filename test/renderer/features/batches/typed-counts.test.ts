import { expect, test } from 'vitest';
import { cellsRemoved } from '../../../../renderer/features/batches/typed-counts.ts';

const aRow = (removed: number | null) => ({ counts: { given: 20, taken: 14, removed, sealed: null } });

test('cells removed are added up over the bars that say so; where none does, nothing is said, not 0', () => {
  expect(cellsRemoved([aRow(null), aRow(null)])).toBeNull();
  expect(cellsRemoved([aRow(0), aRow(null)])).toBe(0);
  expect(cellsRemoved([aRow(3), aRow(null), aRow(2)])).toBe(5);
});
