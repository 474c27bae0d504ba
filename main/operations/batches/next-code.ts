import type { Tables } from '../../workbook/workbook.ts';

/** The next free batch code of a season: 26-07. Gaps are not filled, so that a code never means two batches. */
export function nextBatchCode(tables: Tables, season: number): string {
  const year = String(season % 100).padStart(2, '0');
  const numbers = tables.batches.where({ season }).map((batch) => Number(batch.code.match(/^\d{2}-(\d+)$/)?.[1] ?? 0));
  return `${year}-${String(Math.max(0, ...numbers) + 1).padStart(2, '0')}`;
}
