import { drawTable, type FlowTable } from './flowing-table.ts';
import { openPaper, type PaperDocument } from './paper-document.ts';
import { asOrnament, type Part, taggedParts } from './tagged-parts.ts';
import { type PaperFont, POINT, wrapText } from './text-fit.ts';

export interface FlowingChoice {
  readonly title: string;
  readonly paper: 'a4' | 'letter';
  readonly large: boolean;
  /** Stands at the foot of every page, before "page x of y". */
  readonly foot: string;
  page(page: number, pages: number): string;
  readonly madeAt: string;
  readonly language: string;
  /** In the letters of a book: for what is read at length. */
  readonly serif?: boolean;
}

/** Where on the paper things stand now; all in millimetres, sizes in points. */
export interface Flow {
  readonly document: PaperDocument;
  readonly root: Part;
  readonly sizes: FlowSizes;
  readonly left: number;
  readonly width: number;
  /** The upper edge of what comes next. */
  y: number;
  /** Begins a new page where less than so much room is left. */
  need(height: number): boolean;
}

export interface FlowSizes {
  readonly title: number;
  readonly heading: number;
  readonly body: number;
  readonly table: number;
  readonly small: number;
}

/** A paper whose words run on over as many pages as they need: A4 or letter upright, black only, tagged for reading aloud. */
export interface FlowingPaper {
  heading(text: string, level: 'H1' | 'H2'): void;
  paragraph(text: string, font?: PaperFont): void;
  list(items: readonly string[]): void;
  table(table: FlowTable): void;
  /** A picture of that height in millimetres; `alt` says the same in words. */
  figure(height: number, alt: string, draw: (flow: Flow) => void): void;
  /** Lines for a pen, with what they are for. */
  blanks(lines: number, what: string): void;
  /** Words over a picture of that height, never parted from it. */
  caption(text: string, height: number): void;
  /** A dashed line across the middle of the paper, below which the rest stands, where what is above leaves room for it. */
  fold(text: string): void;
  newPage(): void;
  readonly sizes: FlowSizes;
  finish(): Promise<{ readonly bytes: Buffer; readonly pages: number }>;
}

/** Millimetres: ISO 216 A4, ANSI/ASME Y14.1 letter. */
export const PAPERS = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
const MARGIN = 15;
const FOOT_ROOM = 8;
/** 10.4 pt is read with ease at a table (ISO 9241-3, 22 minutes of arc at 40 cm); large print is 16 pt and more. */
const SIZES: Readonly<Record<'usual' | 'large', FlowSizes>> = {
  usual: { title: 20, heading: 14, body: 11, table: 10, small: 9 },
  large: { title: 26, heading: 20, body: 17, table: 16, small: 13 },
};
const LINE = 1.25;
/** So many lines of an entry are not parted, so a heading needs room for as many after it. */
const MOST_KEPT = 5;

export function flowingPaper(choice: FlowingChoice): FlowingPaper {
  const { title, madeAt, language, serif = false } = choice;
  const document = openPaper({ title, madeAt, language, serif, tagged: true, keepPages: true });
  const root = taggedParts(document.pdf);
  const { width, height } = PAPERS[choice.paper];
  const newPage = () => {
    document.addPage(width, height);
    flow.y = MARGIN;
  };
  const flow: Flow = {
    document,
    root,
    sizes: SIZES[choice.large ? 'large' : 'usual'],
    left: MARGIN,
    width: width - 2 * MARGIN,
    y: MARGIN,
    need: (room) => {
      if (flow.y + room <= height - MARGIN - FOOT_ROOM) return false;
      newPage();
      return true;
    },
  };
  newPage();
  return {
    heading: (text, level) => drawHeading(flow, text, level),
    paragraph: (text, font = 'regular') => drawParagraph(flow, text, font),
    list: (items) => drawList(flow, items),
    table: (table) => drawTable(flow, table),
    figure: (room, alt, draw) => {
      flow.need(room);
      root.draw('Figure', () => draw(flow), { alt });
      flow.y += room;
    },
    blanks: (lines, what) => drawBlanks(flow, lines, what),
    caption: (text, room) => {
      flow.need(room + 2 * lineHeight(flow.sizes.body));
      drawParagraph(flow, text, 'bold');
    },
    fold: (text) => drawFold(flow, text, height / 2),
    newPage,
    sizes: flow.sizes,
    finish: async () => {
      root.close();
      const pages = drawFeet(flow, choice, height);
      return { bytes: await document.finish(), pages };
    },
  };
}

const lineHeight = (points: number): number => points * LINE * POINT;
/** From a line's upper edge to its baseline. */
const baseline = (points: number): number => points * 0.95 * POINT;

/** Millimetres between lines for a pen. */
const PEN_LINE = 10;

function drawBlanks(flow: Flow, lines: number, what: string): void {
  drawParagraph(flow, what, 'regular');
  flow.need(lines * PEN_LINE);
  asOrnament(flow.document.pdf, () => {
    for (let line = 1; line <= lines; line += 1) {
      const y = flow.y + line * PEN_LINE - 2;
      flow.document.line(flow.left, y, flow.left + flow.width, y, 0.2);
    }
  });
  flow.y += lines * PEN_LINE;
}

function drawHeading(flow: Flow, text: string, level: 'H1' | 'H2'): void {
  const points = level === 'H1' ? flow.sizes.title : flow.sizes.heading;
  const lines = wrapText(text, 'bold', points, flow.width, flow.document.measure);
  const before = level === 'H1' ? 0 : 5;
  // A heading is never the last thing on a page.
  if (!flow.need(before + lines.length * lineHeight(points) + MOST_KEPT * lineHeight(flow.sizes.body)))
    flow.y += before;
  drawLines(flow, flow.root, level, lines, 'bold', points, flow.left);
  flow.y += 1.5;
}

function drawParagraph(flow: Flow, text: string, font: PaperFont): void {
  const points = flow.sizes.body;
  const lines = wrapText(text, font, points, flow.width, flow.document.measure);
  if (lines.length < 6) flow.need(lines.length * lineHeight(points));
  drawLines(flow, flow.root, 'P', lines, font, points, flow.left);
  flow.y += 1.5;
}

function drawList(flow: Flow, items: readonly string[]): void {
  const { document, sizes, left, width } = flow;
  const list = flow.root.inside('L');
  const indent = 5;
  for (const item of items) {
    const lines = wrapText(item, 'regular', sizes.body, width - indent, document.measure);
    flow.need(Math.min(lines.length, MOST_KEPT) * lineHeight(sizes.body));
    const up = flow.y + baseline(sizes.body);
    asOrnament(document.pdf, () => document.text('–', 'regular', sizes.body, left, up));
    drawLines(flow, list.inside('LI'), 'LBody', lines, 'regular', sizes.body, left + indent);
    flow.y += 0.8;
  }
  flow.y += 1;
}

function drawFold(flow: Flow, text: string, middle: number): void {
  if (flow.y > middle) return;
  const { document, sizes, left, width } = flow;
  asOrnament(document.pdf, () => {
    document.pdf.dash(4, { space: 3 });
    document.line(left, middle, left + width, middle, 0.15);
    document.pdf.undash();
    document.text(text, 'regular', sizes.small, left, middle - 1);
  });
  flow.y = middle;
}

/** Lines one under another; where the page ends, the rest goes on as a part of the same kind. */
function drawLines(
  flow: Flow,
  part: Part,
  type: 'H1' | 'H2' | 'P' | 'LBody',
  lines: readonly string[],
  font: PaperFont,
  points: number,
  x: number,
): void {
  let rest = lines;
  while (rest.length > 0) {
    flow.need(lineHeight(points));
    let drawn = 0;
    part.draw(type, () => {
      for (const line of rest) {
        if (drawn > 0 && !fits(flow, lineHeight(points))) return;
        flow.document.text(line, font, points, x, flow.y + baseline(points));
        flow.y += lineHeight(points);
        drawn += 1;
      }
    });
    rest = rest.slice(drawn);
  }
}

const fits = (flow: Flow, room: number): boolean => {
  const height = flow.document.pdf.page.height * POINT;
  return flow.y + room <= height - MARGIN - FOOT_ROOM;
};

function drawFeet(flow: Flow, choice: FlowingChoice, height: number): number {
  const { document, sizes, left, width } = flow;
  const { count } = document.pdf.bufferedPageRange();
  for (let index = 0; index < count; index += 1) {
    document.pdf.switchToPage(index);
    const page = choice.page(index + 1, count);
    const pageWidth = document.measure(page, 'regular', sizes.small);
    const [foot = ''] = wrapText(choice.foot, 'regular', sizes.small, width - pageWidth - 6, document.measure);
    asOrnament(document.pdf, () => {
      document.line(left, height - MARGIN - 5, left + width, height - MARGIN - 5, 0.1);
      document.text(foot, 'regular', sizes.small, left, height - MARGIN);
      document.text(page, 'regular', sizes.small, left + width - pageWidth, height - MARGIN);
    });
  }
  return count;
}
