import type { Flow, FlowSizes } from './flowing-paper.ts';
import { inPoints } from './paper-document.ts';
import { fitShortened, POINT } from './text-fit.ts';

/** One row of the chart: a share with its range, 0 to 1. */
export interface RangeRow {
  readonly label: string;
  readonly mean: number;
  readonly lower: number;
  readonly upper: number;
  /** Stands at the right of the range. */
  readonly note: string;
}

const LABEL_SHARE = 0.26;
const NOTE_SHARE = 0.24;
const RULE = 0.1;
const RANGE = 0.5;
const MARK = 1.5;

const rowHeight = (sizes: FlowSizes): number => Math.max(7, sizes.table * 1.5 * POINT);

/** Millimetres that a chart of so many rows takes, with its scale. */
export const rangeChartHeight = (sizes: FlowSizes, rows: number): number =>
  rows * rowHeight(sizes) + sizes.small * 1.6 * POINT + 3;

/** Dots with their ranges on a scale from 0 to 100 %; black only, each row's mark of its own shape. */
export function drawRangeChart(flow: Flow, rows: readonly RangeRow[]): void {
  const { document, sizes, left, width } = flow;
  const [from, room] = [left + width * LABEL_SHARE, width * (1 - LABEL_SHARE - NOTE_SHARE)];
  const at = (share: number): number => from + share * room;
  const step = rowHeight(sizes);
  const bottom = flow.y + rows.length * step;
  for (const tenth of [0, 25, 50, 75, 100]) {
    document.line(at(tenth / 100), flow.y, at(tenth / 100), bottom, RULE);
    const text = `${tenth}`;
    const half = document.measure(text, 'regular', sizes.small) / 2;
    document.text(text, 'regular', sizes.small, at(tenth / 100) - half, bottom + sizes.small * POINT + 0.5);
  }
  for (const [index, row] of rows.entries()) {
    const middle = flow.y + index * step + step / 2;
    const baseline = middle + sizes.table * 0.33 * POINT;
    const put = (text: string, x: number, space: number) => {
      const wish = { font: 'regular', from: sizes.table, floor: 8, width: space, lines: 1 } as const;
      const fitted = fitShortened(text, wish, document.measure);
      document.text(fitted.lines[0] ?? '', 'regular', fitted.points, x, baseline);
    };
    put(row.label, left, width * LABEL_SHARE - 3);
    put(row.note, at(1) + 3, width * NOTE_SHARE - 3);
    document.line(at(row.lower), middle, at(row.upper), middle, RANGE);
    document.line(at(row.lower), middle - 1, at(row.lower), middle + 1, RANGE);
    document.line(at(row.upper), middle - 1, at(row.upper), middle + 1, RANGE);
    drawMark(flow, index, at(row.mean), middle);
  }
}

/** Circle, square, triangle, diamond, in turn: told apart without colour. */
function drawMark({ document: { pdf } }: Flow, index: number, x: number, y: number): void {
  const point = (dx: number, dy: number): [number, number] => [inPoints(x + dx * MARK), inPoints(y + dy * MARK)];
  const shapes = [
    () => pdf.circle(...point(0, 0), inPoints(MARK * 0.95)),
    () => pdf.polygon(point(-0.85, -0.85), point(0.85, -0.85), point(0.85, 0.85), point(-0.85, 0.85)),
    () => pdf.polygon(point(0, -1.1), point(1.1, 0.9), point(-1.1, 0.9)),
    () => pdf.polygon(point(0, -1.2), point(1.2, 0), point(0, 1.2), point(-1.2, 0)),
  ];
  shapes[index % shapes.length]?.().fill();
}
