import type { Flow } from './flowing-paper.ts';
import { asOrnament, type Part } from './tagged-parts.ts';
import { type PaperFont, POINT, wrapText } from './text-fit.ts';

export interface FlowTable {
  readonly columns: readonly { readonly title: string; readonly numeric?: boolean }[];
  /** One text a column; a line break begins a new line in the cell. The first column names the row. */
  readonly rows: readonly (readonly string[])[];
}

const LINE = 1.2;
const AIR = 1;
const GAP = 3;
const RULE = 0.1;

interface Ruled {
  readonly table: FlowTable;
  readonly widths: readonly number[];
}

/**
 * A table with columns as wide as their words ask for. Where not even the longest words fit beside each other, as often
 * in large print, each row becomes a short list of its own instead of being cut.
 */
export function drawTable(flow: Flow, table: FlowTable): void {
  const widths = columnWidths(flow, table);
  if (widths === null) drawStacked(flow, table);
  else drawRuled(flow, { table, widths });
  flow.y += 3;
}

/** Millimetres for each column, or null where the longest words are wider than the paper. */
function columnWidths(flow: Flow, { columns, rows }: FlowTable): readonly number[] | null {
  const { measure } = flow.document;
  const size = flow.sizes.table;
  const room = flow.width - GAP * (columns.length - 1);
  const needs = columns.map(({ title }, index) => {
    const texts = rows.map((row) => row[index] ?? '');
    const font = fontOf(index);
    const widest = (parts: readonly string[], of: PaperFont) =>
      Math.max(0, ...parts.map((part) => measure(part, of, size)));
    const words = texts.flatMap((text) => text.split(/[\n ]/));
    return {
      least: Math.max(widest(words, font), widest(title.split(' '), 'bold')),
      wish: Math.max(
        widest(
          texts.flatMap((text) => text.split('\n')),
          font,
        ),
        widest([title], 'bold'),
      ),
    };
  });
  const least = needs.reduce((sum, need) => sum + need.least, 0);
  if (least > room) return null;
  const wish = needs.reduce((sum, need) => sum + need.wish, 0);
  const share = wish === least ? 0 : Math.min(1, (room - least) / (wish - least));
  const spare = wish < room ? (room - wish) / columns.length : 0;
  return needs.map((need) => need.least + (need.wish - need.least) * share + spare);
}

const fontOf = (column: number): PaperFont => (column === 0 ? 'bold' : 'regular');

function drawRuled(flow: Flow, ruled: Ruled): void {
  const { table } = ruled;
  const part = flow.root.inside('Table');
  const head = table.columns.map(({ title }) => title);
  const headHeight = rowHeight(flow, ruled, head, true);
  const first = table.rows[0] ?? [];
  flow.need(headHeight + rowHeight(flow, ruled, first, false));
  drawRow(flow, ruled, head, part.inside('TR'), true);
  for (const row of table.rows) {
    // The head stands again on every page, for the eye only.
    if (flow.need(rowHeight(flow, ruled, row, false))) drawRow(flow, ruled, head, null, true);
    drawRow(flow, ruled, row, part.inside('TR'), false);
  }
}

function cellLines(
  flow: Flow,
  { widths }: Ruled,
  row: readonly string[],
  head: boolean,
): readonly (readonly string[])[] {
  return row.map((text, index) =>
    text
      .split('\n')
      .flatMap((line) =>
        wrapText(
          line,
          head ? 'bold' : fontOf(index),
          flow.sizes.table,
          (widths[index] ?? 0) + 0.01,
          flow.document.measure,
        ),
      ),
  );
}

function rowHeight(flow: Flow, ruled: Ruled, row: readonly string[], head: boolean): number {
  const lines = Math.max(1, ...cellLines(flow, ruled, row, head).map(({ length }) => length));
  return lines * flow.sizes.table * LINE * POINT + 2 * AIR;
}

/** `part` is null for a head that is only repeated. */
function drawRow(flow: Flow, ruled: Ruled, row: readonly string[], part: Part | null, head: boolean): void {
  const { document, sizes, left, width } = flow;
  const height = rowHeight(flow, ruled, row, head);
  const top = flow.y + AIR + sizes.table * 0.92 * POINT;
  const line = sizes.table * LINE * POINT;
  let x = left;
  for (const [index, lines] of cellLines(flow, ruled, row, head).entries()) {
    const font = head ? 'bold' : fontOf(index);
    const room = ruled.widths[index] ?? 0;
    const from = x;
    const draw = () => {
      for (const [n, text] of lines.entries()) {
        const right = ruled.table.columns[index]?.numeric ? room - document.measure(text, font, sizes.table) : 0;
        document.text(text, font, sizes.table, from + right, top + n * line);
      }
    };
    if (part === null) asOrnament(document.pdf, draw);
    else if (head) part.draw('TH', draw, { scope: 'Column' });
    else if (index === 0) part.draw('TH', draw, { scope: 'Row' });
    else part.draw('TD', draw);
    x += room + GAP;
  }
  flow.y += height;
  asOrnament(document.pdf, () => document.line(left, flow.y, left + width, flow.y, head ? 0.4 : RULE));
}

function drawStacked(flow: Flow, { columns, rows }: FlowTable): void {
  const { document, sizes, left, width } = flow;
  const line = sizes.table * LINE * POINT;
  for (const [name = '', ...rest] of rows) {
    const list = flow.root.inside('L');
    const lines = [
      { text: name, font: 'bold' as PaperFont },
      ...rest.flatMap((text, index) =>
        text === ''
          ? []
          : [
              {
                text: `${columns[index + 1]?.title ?? ''}: ${text.replaceAll('\n', ', ')}`,
                font: 'regular' as PaperFont,
              },
            ],
      ),
    ].map(({ text, font }) => ({ font, lines: wrapText(text, font, sizes.table, width, document.measure) }));
    flow.need(
      Math.min(
        6,
        lines.reduce((sum, one) => sum + one.lines.length, 0),
      ) *
        line +
        2,
    );
    for (const { font, lines: wrapped } of lines) {
      flow.need(wrapped.length * line);
      list.inside('LI').draw('LBody', () => {
        for (const text of wrapped) {
          document.text(text, font, sizes.table, left, flow.y + sizes.table * 0.95 * POINT);
          flow.y += line;
        }
      });
    }
    flow.y += 1;
    asOrnament(document.pdf, () => document.line(left, flow.y, left + width, flow.y, RULE));
    flow.y += 1;
  }
}
