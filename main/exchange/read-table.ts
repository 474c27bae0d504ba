import Papa from 'papaparse';
import readXlsxFile from 'read-excel-file/universal';
import type { FileTrouble } from '../../shared/contract/import.ts';
import { dayOfDate, isoOfDay } from '../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { withoutGuard } from './csv-text.ts';
import { decodeText } from './decode-text.ts';
import { FILE_LIMITS, UnreadableFile, unreadable } from './file-limits.ts';
import { isZip, plainZip, readZip } from './read-zip.ts';

/** A table as it stands in a file: texts only, nothing read into them yet. */
export interface RawTable {
  readonly headings: readonly string[];
  /** Rows that hold anything. `number` counts as a spreadsheet does: the headings are row 1. */
  readonly rows: readonly RawRow[];
  /** Names of all sheets of the file, and the one that was read; empty for a text file. */
  readonly sheets: readonly string[];
  readonly sheet: string | null;
}

export interface RawRow {
  readonly number: number;
  readonly cells: readonly string[];
}

/** Reads a CSV or XLSX file within the limits. `sheet` = the sheet wanted; null = the first that holds anything. */
export async function readTable(bytes: Uint8Array, sheet: string | null): Promise<Result<RawTable, FileTrouble>> {
  try {
    if (bytes.length > FILE_LIMITS.bytes) throw unreadable('too-large', { limit: FILE_LIMITS.bytes });
    return ok(isZip(bytes) ? await readSheets(bytes, sheet) : readText(decodeText(bytes)));
  } catch (error) {
    if (error instanceof UnreadableFile) return refuse(error.trouble);
    throw error;
  }
}

function readText(raw: string): RawTable {
  // Zero signs stand in no table that a person wrote.
  if (raw.includes('\0')) throw unreadable('not-a-table');
  // One kind of line end, whatever the file mixes.
  const text = raw.replace(/^\ufeff/, '').replaceAll(/\r\n?/g, '\n');
  const lines: string[][] = [];
  let cells = 0;
  let quoteLeftOpen = false;
  Papa.parse<string[]>(text, {
    delimiter: separatorOf(text),
    newline: '\n',
    step: ({ data, errors }) => {
      lines.push(data);
      cells += data.length;
      quoteLeftOpen ||= errors.some(({ code }) => code === 'MissingQuotes');
      checkSize(lines.length, data.length, cells);
    },
  });
  // Such a quote swallows the rest of the file.
  if (quoteLeftOpen) throw unreadable('quote-left-open', { row: lines.length });
  return tableOf(
    lines.map((line) => line.map((cell) => withoutGuard(cell))),
    [],
    null,
  );
}

const SEPARATORS = [',', ';', '\t', '|'] as const;
/** So many rows tell how the columns are parted. */
const SAMPLE_ROWS = 20;

/** The sign that parts most rows into as many columns as there are headings. */
function separatorOf(text: string): string {
  const scores = SEPARATORS.map((separator) => {
    const { data } = Papa.parse<string[]>(text, { delimiter: separator, newline: '\n', preview: SAMPLE_ROWS });
    const columns = data[0]?.length ?? 1;
    const alike = columns === 1 ? 0 : data.filter(({ length }) => length === columns).length;
    return { separator, alike, columns };
  });
  return scores.toSorted((a, b) => b.alike - a.alike || b.columns - a.columns)[0]?.separator ?? ',';
}

async function readSheets(bytes: Uint8Array, wanted: string | null): Promise<RawTable> {
  const entries = readZip(bytes, (name) => /\.(xml|rels)$/i.test(name));
  if (!entries.has('xl/workbook.xml')) throw unreadable('not-a-table');
  for (const [name, content] of entries) if (name.startsWith('xl/worksheets/')) checkSheetSize(content);
  const sheets = await parsedSheets(entries);
  const chosen = sheets.find(({ name }) => name === wanted) ?? sheets.find(({ rows }) => rows.length > 1) ?? sheets[0];
  if (!chosen) throw unreadable('empty');
  return tableOf(
    chosen.rows,
    sheets.map(({ name }) => name),
    chosen.name,
  );
}

interface ParsedSheet {
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
}

async function parsedSheets(entries: ReadonlyMap<string, Uint8Array>): Promise<readonly ParsedSheet[]> {
  const zip = plainZip(entries);
  try {
    const sheets = await readXlsxFile(Uint8Array.from(zip).buffer);
    return sheets.map(({ sheet, data }) => ({ name: sheet, rows: data.map((row) => row.map(cellText)) }));
  } catch {
    // The library throws its own errors for whatever it cannot make sense of.
    throw unreadable('not-a-table');
  }
}

/** Real dates come as Date at UTC midnight; a time of day is left off. */
function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return '';
  if (cell instanceof Date) return dayText(cell);
  return String(cell);
}

/** Dates of a sheet run from 1900 to 9999; what lies outside is no day. */
function dayText(date: Date): string {
  const [year, month, dayOfMonth] = [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()];
  return year >= 1900 && year <= 9999 ? isoOfDay(dayOfDate({ year, month, dayOfMonth })) : '';
}

/** Looked at before the cells are laid out: one cell far to the lower right would make a table of millions. */
function checkSheetSize(xml: Uint8Array): void {
  let row = 1;
  let column = 1;
  let cells = 0;
  for (const [, letters = '', number = ''] of latin1(xml).matchAll(/\br="([A-Z]{0,7})(\d{1,9})"/g)) {
    row = Math.max(row, Number(number));
    column = Math.max(column, columnNumber(letters));
    cells += 1;
  }
  checkSize(row, column, Math.max(cells, row * column));
}

const latin1 = (bytes: Uint8Array): string => new TextDecoder('latin1').decode(bytes);

const columnNumber = (letters: string): number =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

function checkSize(rows: number, columns: number, cells: number): void {
  if (rows > FILE_LIMITS.rows) throw unreadable('too-many-rows', { limit: FILE_LIMITS.rows });
  if (columns > FILE_LIMITS.columns) throw unreadable('too-many-columns', { limit: FILE_LIMITS.columns });
  if (cells > FILE_LIMITS.cells) throw unreadable('too-many-cells', { limit: FILE_LIMITS.cells });
}

function tableOf(lines: readonly (readonly string[])[], sheets: readonly string[], sheet: string | null): RawTable {
  const rows = lines
    .map((cells, index) => ({ number: index + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const [head, ...rest] = rows;
  if (!head || rest.length === 0) throw unreadable('empty');
  const tooLong = rows.find(({ cells }) => cells.some((cell) => cell.length > FILE_LIMITS.cellSigns));
  if (tooLong) throw unreadable('cell-too-long', { row: tooLong.number, limit: FILE_LIMITS.cellSigns });
  return { headings: head.cells, rows: rest, sheets, sheet };
}
