import type { ImportTable, TablePreview } from '../../../shared/contract/import.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { planTable } from './table-plan.ts';

const SHOWN_ROWS = 20;
const SHOWN_SIGNS = 80;
const SHOWN_PROBLEMS = 200;

/** A dry run: how the columns are understood, what is wrong with which row, and how many rows would be taken in. */
export async function previewTable(desk: Desk, choice: ImportTable): Promise<Result<TablePreview, Refusal>> {
  const planned = await planTable(desk, choice);
  if (!planned.ok) return planned;
  const { table, columns, missing, dayOrder, dayOrderUnclear, drafts } = planned.value;
  return ok({
    sheets: table.sheets,
    sheet: table.sheet,
    headings: table.headings,
    columns,
    missing,
    rows: table.rows
      .slice(0, SHOWN_ROWS)
      .map(({ number, cells }) => ({ number, cells: cells.map((cell) => cell.slice(0, SHOWN_SIGNS)) })),
    rowCount: table.rows.length,
    ready: drafts.ready.length,
    problems: drafts.problems.slice(0, SHOWN_PROBLEMS),
    problemRows: drafts.problemRows,
    newYards: drafts.newYards,
    dayOrder,
    dayOrderUnclear,
  });
}
