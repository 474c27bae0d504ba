import type { Tables } from '../workbook/workbook.ts';

/** The next free queen number of a birth year: 26-041. Gaps are not filled: a number never means two queens. */
export function nextQueenNumber(tables: Tables, bornIn: number): string {
  const year = String(bornIn % 100).padStart(2, '0');
  const numbers = tables.queens.where({ bornIn }).map((queen) => Number(queen.number.match(/^\d{2}-(\d+)$/)?.[1] ?? 0));
  return `${year}-${String(Math.max(0, ...numbers) + 1).padStart(3, '0')}`;
}
