import writeXlsxFile from 'write-excel-file/node';
import type { Cell, Sheet, SheetColumn } from '../../shared/contract/exchange.ts';
import { dateOfDay, dayOfIso } from '../../shared/kernel/day.ts';

/** Signs in a column; the longest notes wrap. */
const NARROWEST = 10;
const WIDEST = 48;
/** A sheet's name holds 31 signs at most (a limit of the format). */
const LONGEST_NAME = 31;

/** Tables as one spreadsheet file: a sheet a table, headings kept in sight, days as real dates. */
export async function xlsxBytes(sheets: readonly Sheet[]): Promise<Uint8Array> {
  const made = writeXlsxFile(
    sheets.map((sheet) => ({
      sheet: sheet.title.slice(0, LONGEST_NAME),
      stickyRowsCount: 1,
      columns: sheet.columns.map((column, index) => ({ width: widthOf(column, sheet.rows, index) })),
      data: [
        sheet.columns.map(({ heading }) => ({ value: heading, fontWeight: 'bold' as const })),
        ...sheet.rows.map((row) => row.map((cell, index) => sheetCell(cell, sheet.columns[index]))),
      ],
    })),
  );
  return made.toBuffer();
}

function sheetCell(cell: Cell, column: SheetColumn | undefined) {
  if (cell === null || cell === '') return null;
  if (typeof cell === 'number') return { value: cell, type: Number };
  if (typeof cell === 'boolean') return { value: cell, type: Boolean };
  if (column?.kind === 'day') return { value: dateOf(cell), type: Date, format: 'yyyy-mm-dd' };
  // A cell of the type text is never read as a formula, so it needs no guard.
  return { value: cell, type: String };
}

/** The library takes the UTC reading of a Date; midnight there is the civil day itself. */
function dateOf(isoDay: string): Date {
  const { year, month, dayOfMonth } = dateOfDay(dayOfIso(isoDay));
  return new Date(Date.UTC(year, month - 1, dayOfMonth));
}

function widthOf(column: SheetColumn, rows: readonly (readonly Cell[])[], index: number): number {
  const longest = rows.reduce((most, row) => Math.max(most, String(row[index] ?? '').length), column.heading.length);
  return Math.min(Math.max(longest + 2, NARROWEST), WIDEST);
}
