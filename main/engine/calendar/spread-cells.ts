/** So many cells over so many bars as evenly as can be, the fuller bars first; empty without a bar. */
export const spreadCells = (cells: number, bars: number): readonly number[] =>
  Array.from({ length: bars }, (_, bar) => Math.floor(cells / bars) + (bar < cells % bars ? 1 : 0));
