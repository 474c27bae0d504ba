import type { Cell } from '../../shared/contract/exchange.ts';

export interface CsvForm {
  /** With semicolons goes the decimal comma. */
  readonly separator: ',' | ';';
}

/**
 * A text that a spreadsheet would take for a formula gets an apostrophe in front, which spreadsheets do not show: one
 * that begins with = + - @, a tab or a line end (OWASP, "CSV Injection"). So does one that begins with such apostrophes
 * already, for else it could not be told from a guarded one when it is read again.
 */
export const LOOKS_LIKE_FORMULA = /^'*[=+\-@\t\r\n]/;

/** Takes the apostrophe off again. */
export const withoutGuard = (text: string): string =>
  text.startsWith("'") && LOOKS_LIKE_FORMULA.test(text) ? text.slice(1) : text;

/**
 * Rows as CSV (RFC 4180): fields with a separator, a quote, a line end or a space at either end stand in quotes, quotes
 * are doubled, rows end with CRLF. null is an empty field. Only texts are guarded, never numbers.
 */
export function csvText(headings: readonly string[], rows: Iterable<readonly Cell[]>, { separator }: CsvForm): string {
  const needsQuotes = separator === ',' ? /[",\r\n\ufeff]|^ | $/ : /[";\r\n\ufeff]|^ | $/;
  let text = headings.map((heading) => textField(heading, needsQuotes)).join(separator);
  for (const row of rows) {
    text += '\r\n';
    for (let index = 0; index < row.length; index += 1) {
      const cell = row[index];
      if (index > 0) text += separator;
      if (typeof cell === 'string') text += textField(cell, needsQuotes);
      else if (cell !== null && cell !== undefined) text += plainField(cell, separator);
    }
  }
  return text;
}

/** 12, 2.5 or 2,5, true */
function plainField(cell: number | boolean, separator: CsvForm['separator']): string {
  return typeof cell === 'number' && separator === ';' ? String(cell).replace('.', ',') : String(cell);
}

function textField(text: string, needsQuotes: RegExp): string {
  if (LOOKS_LIKE_FORMULA.test(text)) return `"'${text.replaceAll('"', '""')}"`;
  return needsQuotes.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** By this mark spreadsheets know UTF-8. */
export const BYTE_ORDER_MARK = '\ufeff';
