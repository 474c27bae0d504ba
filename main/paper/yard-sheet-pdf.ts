import type { ResultKey } from '../../shared/model/look-key.ts';
import type { Words } from '../../shared/text/english/english.ts';
import { openPaper, type PaperDocument } from './paper-document.ts';
import { fitShortened, fitText, type PaperFont, POINT } from './text-fit.ts';

export interface YardSheetRow {
  readonly code: string;
  readonly doing: string;
  /** To be looked into, or to be left shut (in heavy letters, nothing to tick or fill in), or holding no queen. */
  readonly kind: 'look' | 'hands-off' | 'free';
  readonly last: string;
}

export interface YardSheetPaper {
  /** In the language of the workbook. */
  readonly words: Words;
  readonly yard: string;
  readonly day: string;
  readonly leaveAlone: readonly string[];
  readonly rows: readonly YardSheetRow[];
  /** The keys of the evening's typing, to be ringed. */
  readonly keys: readonly ResultKey[];
  readonly foot: string;
  readonly paper: 'a4' | 'letter';
  readonly large: boolean;
  readonly madeAt: string;
}

/** Millimetres: ISO 216 A4, ANSI/ASME Y14.1 letter. */
const PAPERS = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
const MARGIN = 12;
/** At least 10 mm for pencil; 13 pt is read with ease at 40 to 60 cm (ISO 9241-3). */
const SIZES = {
  usual: { row: 11, code: 18, body: 13, small: 10.5 },
  large: { row: 15, code: 22, body: 18, small: 13 },
} as const;
/** Left edges of the columns, from the left margin. */
const COLUMNS = { tick: 0, code: 7, what: 28, keys: 83, strength: 146, food: 156, number: 166 } as const;
const HEAD_HEIGHT = 38;
const FOOT_HEIGHT = 12;
const CHANCE_ROWS = 4;
const RULE = 0.1;
const BOLD_RULE = 0.4;

type Sheet = YardSheetPaper & {
  readonly document: PaperDocument;
  readonly size: (typeof SIZES)[keyof typeof SIZES];
  readonly width: number;
  readonly height: number;
};

/** One line a box in walking order, to be ringed and ticked in pencil; black only, without fills. */
export async function yardSheetPdf(paper: YardSheetPaper): Promise<{ readonly bytes: Buffer; readonly pages: number }> {
  const document = openPaper({ title: `${paper.words.yardSheet.title} ${paper.yard}`, madeAt: paper.madeAt });
  const sheet = { ...paper, ...PAPERS[paper.paper], document, size: paper.large ? SIZES.large : SIZES.usual };
  const perPage = Math.floor((sheet.height - 2 * MARGIN - HEAD_HEIGHT - FOOT_HEIGHT) / sheet.size.row);
  const lines: readonly (YardSheetRow | null)[] = [...paper.rows, ...new Array<null>(CHANCE_ROWS).fill(null)];
  const pages = Math.ceil(lines.length / perPage);
  for (let page = 0; page < pages; page += 1) {
    document.addPage(sheet.width, sheet.height);
    drawHead(sheet);
    for (const [index, row] of lines.slice(page * perPage, (page + 1) * perPage).entries()) {
      const y = MARGIN + HEAD_HEIGHT + index * sheet.size.row;
      drawRow(sheet, row, y, lines[page * perPage + index - 1] !== null);
    }
    drawFoot(sheet, sheet.words.yardSheet.page(page + 1, pages));
  }
  return { bytes: await document.finish(), pages };
}

function drawHead(sheet: Sheet): void {
  const { document, size, width } = sheet;
  const room = width - 2 * MARGIN;
  put(sheet, `${sheet.words.yardSheet.title}, ${sheet.yard}`, 'bold', 18, MARGIN, MARGIN + 6, room * 0.55);
  const dayWidth = document.measure(sheet.day, 'bold', 13);
  document.text(sheet.day, 'bold', 13, width - MARGIN - dayWidth, MARGIN + 6);
  blank(sheet, sheet.words.yardSheet.weather, MARGIN, MARGIN + 14, room / 2 - 4);
  blank(sheet, sheet.words.yardSheet.who, MARGIN + room / 2, MARGIN + 14, room / 2);
  document.rectangle(MARGIN, MARGIN + 18, room, 13, BOLD_RULE);
  const shut = sheet.leaveAlone.join('; ');
  const text = shut === '' ? sheet.words.yardSheet.nothingShut : `${sheet.words.yardSheet.leaveAlone}: ${shut}`;
  const wish = { font: 'bold', from: size.body, floor: 9, width: room - 4, lines: 2 } as const;
  const fitted = fitShortened(text, wish, document.measure);
  const line = fitted.points * 1.15 * POINT;
  const top = MARGIN + 24.5 - ((fitted.lines.length - 1) * line) / 2 + fitted.points * 0.33 * POINT;
  for (const [index, one] of fitted.lines.entries())
    document.text(one, 'bold', fitted.points, MARGIN + 2, top + index * line);
  const heads = [
    [sheet.words.yardSheet.heads.box, COLUMNS.code],
    [sheet.words.yardSheet.heads.what, COLUMNS.what],
    [sheet.words.yardSheet.heads.result, COLUMNS.keys],
    [sheet.words.yardSheet.heads.strength, COLUMNS.strength],
    [sheet.words.yardSheet.heads.food, COLUMNS.food],
    [sheet.words.yardSheet.heads.number, COLUMNS.number],
  ] as const;
  for (const [head, x] of heads) document.text(head, 'regular', 9, MARGIN + x, MARGIN + HEAD_HEIGHT - 1.5);
  document.line(MARGIN, MARGIN + HEAD_HEIGHT, width - MARGIN, MARGIN + HEAD_HEIGHT, BOLD_RULE);
}

/** A box, or a blank line for what is found by chance. */
function drawRow(sheet: Sheet, row: YardSheetRow | null, y: number, afterBox: boolean): void {
  const { document, size, width } = sheet;
  const middle = y + size.row / 2;
  document.line(MARGIN, y + size.row, width - MARGIN, y + size.row, RULE);
  if (row === null) {
    if (afterBox)
      document.text(
        sheet.words.yardSheet.byChance,
        'regular',
        size.small,
        MARGIN + COLUMNS.code,
        y + size.small * POINT + 1,
      );
  } else {
    const what = COLUMNS.keys - COLUMNS.what - 2;
    put(
      sheet,
      row.code,
      'bold',
      size.code,
      MARGIN + COLUMNS.code,
      middle + size.code * 0.33 * POINT,
      COLUMNS.what - COLUMNS.code - 2,
    );
    const [upper, lower] =
      row.last === '' ? [middle + size.body * 0.33 * POINT, 0] : [middle - 0.6, y + size.row - 1.4];
    put(sheet, row.doing, row.kind === 'hands-off' ? 'bold' : 'regular', size.body, MARGIN + COLUMNS.what, upper, what);
    if (row.last !== '') put(sheet, row.last, 'regular', size.small, MARGIN + COLUMNS.what, lower, what);
  }
  if (row?.kind === 'hands-off') return;
  document.rectangle(MARGIN + COLUMNS.tick, middle - 2.5, 5, 5, 0.25);
  if (row?.kind !== 'free') {
    const step = (COLUMNS.strength - COLUMNS.keys - 2) / sheet.keys.length;
    for (const [index, { key }] of sheet.keys.entries())
      document.text(key, 'regular', size.body, MARGIN + COLUMNS.keys + index * step, middle + size.body * 0.33 * POINT);
  }
  for (const [from, to] of [
    [COLUMNS.strength, COLUMNS.food - 2],
    [COLUMNS.food, COLUMNS.number - 2],
    [COLUMNS.number, width - 2 * MARGIN],
  ] as const)
    document.line(MARGIN + from, y + size.row - 2.2, MARGIN + to, y + size.row - 2.2, RULE);
}

function drawFoot(sheet: Sheet, page: string): void {
  const { document, width, height } = sheet;
  const list = sheet.keys.map(({ key, result }) => `${key} ${sheet.words.looks[result].name}`).join(', ');
  const y = height - MARGIN;
  const wish = { font: 'regular', from: 9, floor: 9, width: width - 2 * MARGIN, lines: 2 } as const;
  const fitted = fitText(sheet.words.yardSheet.keys(list), wish, document.measure);
  for (const [index, line] of (fitted?.lines ?? []).entries())
    document.text(line, 'regular', 9, MARGIN, y - 8.4 + index * 3.8);
  const pageWidth = document.measure(page, 'regular', 9);
  put(sheet, sheet.foot, 'regular', 9, MARGIN, y, width - 2 * MARGIN - pageWidth - 4);
  document.text(page, 'regular', 9, width - MARGIN - pageWidth, y);
}

/** One line at the wished size, smaller where it must be, shortened only below 9 pt. */
function put(
  { document }: Sheet,
  text: string,
  font: PaperFont,
  points: number,
  x: number,
  y: number,
  room: number,
): void {
  const fitted = fitShortened(text, { font, from: points, floor: 9, width: room, lines: 1 }, document.measure);
  document.text(fitted.lines[0] ?? '', font, fitted.points, x, y);
}

function blank({ document }: Sheet, word: string, x: number, y: number, room: number): void {
  const width = document.measure(word, 'regular', 11);
  document.text(word, 'regular', 11, x, y);
  document.line(x + width + 2, y + 0.6, x + room, y + 0.6, RULE);
}
