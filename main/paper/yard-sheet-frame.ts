import type { YardSheetLines } from '../../shared/contract/print.ts';
import type { ResultKey } from '../../shared/model/look-key.ts';
import type { Words } from '../../shared/text/english/english.ts';
import type { PaperDocument } from './paper-document.ts';
import { asOrnament, drawOnce, type Part } from './tagged-parts.ts';
import { fitShortened, type PaperFont, POINT, wrapText } from './text-fit.ts';

export interface YardSheetRow {
  readonly code: string;
  readonly doing: string;
  /**
   * A box to be looked into, one to be left shut (in heavy letters, nothing to tick or fill in), or one without a queen;
   * or a hive, whose words take the room of the letters.
   */
  readonly kind: 'look' | 'hands-off' | 'free' | 'hive';
  readonly last: string;
}

/** A day of the week ahead in words. */
export interface YardSheetDay {
  readonly day: string;
  readonly jobs: readonly string[];
  readonly leaveAlone: readonly string[];
}

export interface YardSheetPaper {
  /** In the language of the workbook. */
  readonly words: Words;
  readonly lines: YardSheetLines;
  readonly yard: string;
  readonly day: string;
  readonly leaveAlone: readonly string[];
  readonly rows: readonly YardSheetRow[];
  /** The coming days on a page of their own; null without it. */
  readonly week: readonly YardSheetDay[] | null;
  /** The keys of the evening's typing, to be ringed; none on a sheet for hives, which are typed without letters. */
  readonly keys: readonly ResultKey[];
  readonly foot: string;
  readonly paper: 'a4' | 'letter';
  /** Side by side; large print has one. */
  readonly columns: 1 | 2;
  readonly large: boolean;
  /** Squares for notes on the back of every page of lines, for paper that is printed on both sides. */
  readonly squaredBack: boolean;
  readonly madeAt: string;
}

/** Millimetres: ISO 216 A4, ANSI/ASME Y14.1 letter. */
export const PAPERS = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
export const MARGIN = 12;
/** Sizes in points, 13 is read with ease at 40 to 60 cm (ISO 9241-3); `day` and `foot` in millimetres. */
const SIZES = {
  usual: { body: 13, small: 10.5, head: 9, blank: 11, day: 30, foot: 12 },
  large: { body: 18, small: 13, head: 13, blank: 13, day: 40, foot: 25 },
} as const;
export const HEAD_HEIGHT = 38;
export const BOLD_RULE = 0.4;
const RULE = 0.2;
/** Half black: seen when looked for, and no rival to the pencil. */
const GREY = '#808080';

export type Sheet = YardSheetPaper & {
  readonly document: PaperDocument;
  readonly size: (typeof SIZES)[keyof typeof SIZES];
  readonly width: number;
  readonly height: number;
  readonly root: Part;
};

export const openSheet = (paper: YardSheetPaper, document: PaperDocument, root: Part): Sheet => ({
  ...paper,
  ...PAPERS[paper.paper],
  document,
  root,
  size: paper.large ? SIZES.large : SIZES.usual,
});

/** A line to write on or between two rows. */
export function drawRule({ document }: Sheet, x: number, y: number, toX: number, toY: number): void {
  document.pdf.strokeColor(GREY);
  document.line(x, y, toX, toY, RULE);
  document.pdf.strokeColor('black');
}

export function drawTitle(
  sheet: Sheet,
  title: string,
  spoken: { readonly part: Part; readonly level: 'H1' | 'H2' } | null,
): void {
  const { document, width, words } = sheet;
  const room = width - 2 * MARGIN;
  const y = MARGIN + 6;
  if (sheet.lines === 'blank') {
    drawOnce(document.pdf, spoken?.part ?? null, spoken?.level ?? 'H2', () =>
      put(sheet, title, 'bold', 18, MARGIN, y, room * 0.4),
    );
    asOrnament(document.pdf, () => {
      drawBlank(sheet, words.yardSheet.yardLine, MARGIN + room * 0.42, y, room * 0.3 - 4);
      drawBlank(sheet, words.yardSheet.date, MARGIN + room * 0.72, y, room * 0.28);
    });
    return;
  }
  drawOnce(document.pdf, spoken?.part ?? null, spoken?.level ?? 'H2', () => {
    put(sheet, `${title}, ${sheet.yard}`, 'bold', 18, MARGIN, y, room * 0.55);
    const dayWidth = document.measure(sheet.day, 'bold', 13);
    document.text(sheet.day, 'bold', 13, width - MARGIN - dayWidth, y);
  });
}

export function drawLeaveAlone(sheet: Sheet, part: Part | null): void {
  const { document, size, width, words } = sheet;
  const room = width - 2 * MARGIN;
  asOrnament(document.pdf, () => {
    drawBlank(sheet, words.yardSheet.weather, MARGIN, MARGIN + 14, room / 2 - 4);
    drawBlank(sheet, words.yardSheet.who, MARGIN + room / 2, MARGIN + 14, room / 2);
    document.rectangle(MARGIN, MARGIN + 18, room, 13, BOLD_RULE);
  });
  const shut = sheet.leaveAlone.join('; ');
  const nothing = shut === '' && sheet.lines !== 'blank';
  const text = nothing ? words.yardSheet.nothingShut : `${words.yardSheet.leaveAlone}: ${shut}`.trim();
  const wish = { font: 'bold', from: size.body, floor: 9, width: room - 4, lines: 2 } as const;
  const fitted = fitShortened(text, wish, document.measure);
  const line = fitted.points * 1.15 * POINT;
  const top = MARGIN + 24.5 - ((fitted.lines.length - 1) * line) / 2 + fitted.points * 0.33 * POINT;
  drawOnce(document.pdf, part, 'P', () => {
    for (const [index, one] of fitted.lines.entries())
      document.text(one, 'bold', fitted.points, MARGIN + 2, top + index * line);
  });
}

/** What the letters stand for, at the foot; read aloud before the rows. */
export function drawKeys(sheet: Sheet, part: Part | null): void {
  const { document, width, height, words, size } = sheet;
  const list = sheet.keys.map(({ key, result }) => `${key} ${words.looks[result].name}`).join(', ');
  const text = [list === '' ? '' : words.yardSheet.keys(list), words.yardSheet.scale].filter(Boolean).join(' ');
  const lines = wrapText(text, 'regular', size.head, width - 2 * MARGIN, document.measure);
  const line = size.head * 1.2 * POINT;
  drawOnce(document.pdf, part, 'P', () => {
    for (const [index, one] of lines.entries())
      document.text(one, 'regular', size.head, MARGIN, height - MARGIN - 1 - (lines.length - index) * line);
  });
}

export function drawFoot(sheet: Sheet, page: string): void {
  const { document, width, height, size } = sheet;
  const y = height - MARGIN;
  const pageWidth = document.measure(page, 'regular', size.head);
  asOrnament(document.pdf, () => {
    put(sheet, sheet.foot, 'regular', size.head, MARGIN, y, width - 2 * MARGIN - pageWidth - 4);
    document.text(page, 'regular', size.head, width - MARGIN - pageWidth, y);
  });
}

/** Square of five millimetres, as common squared paper has (from memory). */
const SQUARE = 5;

/** The back of a page: squares from margin to margin, whole ones only. */
export function drawSquares(sheet: Sheet): void {
  const { document, width, height } = sheet;
  const across = Math.floor((width - 2 * MARGIN) / SQUARE);
  const down = Math.floor((height - 2 * MARGIN - sheet.size.foot) / SQUARE);
  const right = MARGIN + across * SQUARE;
  const bottom = MARGIN + down * SQUARE;
  asOrnament(document.pdf, () => {
    for (let column = 0; column <= across; column += 1)
      drawRule(sheet, MARGIN + column * SQUARE, MARGIN, MARGIN + column * SQUARE, bottom);
    for (let row = 0; row <= down; row += 1)
      drawRule(sheet, MARGIN, MARGIN + row * SQUARE, right, MARGIN + row * SQUARE);
  });
}

/** One line at the wished size, smaller where it must be; below 9 pt it is shortened, or cut at its end. */
export function put(
  { document }: Sheet,
  text: string,
  font: PaperFont,
  points: number,
  x: number,
  y: number,
  room: number,
  shorten: typeof fitShortened = fitShortened,
): void {
  const fitted = shorten(text, { font, from: points, floor: 9, width: room, lines: 1 }, document.measure);
  document.text(fitted.lines[0] ?? '', font, fitted.points, x, y);
}

function drawBlank(sheet: Sheet, word: string, x: number, y: number, room: number): void {
  const { document, size } = sheet;
  const width = document.measure(word, 'regular', size.blank);
  document.text(word, 'regular', size.blank, x, y);
  drawRule(sheet, x + width + 2, y + 0.6, x + room, y + 0.6);
}
