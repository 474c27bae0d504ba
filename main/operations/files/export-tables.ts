import type { ExportTables, Sheet } from '../../../shared/contract/exchange.ts';
import type { TablesMade } from '../../../shared/contract/files.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { wholeWorkbookSchema } from '../../../shared/contract/whole-workbook.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { BYTE_ORDER_MARK, csvText } from '../../exchange/csv-text.ts';
import { base64Of } from '../../exchange/file-bytes.ts';
import { xlsxBytes } from '../../exchange/workbook-sheets.ts';
import { zipBytes } from '../../exchange/zip-files.ts';
import type { Desk } from '../operation.ts';
import { workbookWords } from '../workbook-words.ts';
import { allSheets, dictionarySheet, sheetOf } from './sheets.ts';
import { wholeWorkbook } from './whole-workbook.ts';

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** The tables of the workbook as files for spreadsheets and other programs. Changes nothing. */
export async function exportTables(desk: Desk, choice: ExportTables): Promise<Result<TablesMade, Refusal>> {
  const { tables } = desk.workbook;
  const words = workbookWords(desk);
  const made = (what: string, ending: string, mediaType: string, content: string | Uint8Array, rows: number) =>
    ok({
      name: `${words.tablesOut.fileName(what, isoOfDay(desk.today))}.${ending}`,
      mediaType,
      base64: base64Of(content),
      rows,
    });
  switch (choice.format) {
    case 'json': {
      const whole = wholeWorkbook(desk);
      const rows = Object.values(whole.tables).reduce((sum, { length }) => sum + length, 0);
      return made('everything', 'json', 'application/json', `${JSON.stringify(whole, null, 1)}\n`, rows);
    }
    case 'schema':
      return made('schema', 'json', 'application/json', `${JSON.stringify(wholeWorkbookSchema(), null, 2)}\n`, 0);
    case 'xlsx': {
      const sheets = allSheets(tables, words);
      return made('tables', 'xlsx', XLSX, await xlsxBytes([...sheets, dictionarySheet(words)]), rowsIn(sheets));
    }
    case 'csv': {
      if (choice.table === 'all') {
        const sheets = allSheets(tables, words);
        const files = [...sheets, dictionarySheet(words)].map((one) => [`${one.key}.csv`, csvOf(one, choice)] as const);
        return made('tables', 'zip', 'application/zip', zipBytes(Object.fromEntries(files)), rowsIn(sheets));
      }
      const sheet = choice.table === 'dictionary' ? dictionarySheet(words) : sheetOf(tables, choice.table, words);
      return made(choice.table, 'csv', 'text/csv', csvOf(sheet, choice), sheet.rows.length);
    }
  }
}

const rowsIn = (sheets: readonly Sheet[]): number => sheets.reduce((sum, { rows }) => sum + rows.length, 0);

function csvOf({ columns, rows }: Sheet, { separator, mark }: ExportTables): string {
  const headings = columns.map(({ heading }) => heading);
  const text = csvText(headings, rows, { separator: separator === 'comma' ? ',' : ';' });
  return `${mark ? BYTE_ORDER_MARK : ''}${text}\r\n`;
}
