import type { ResultKey } from '../../shared/model/look-key.ts';
import type { Words } from '../../shared/text/english/english.ts';
import { openPaper, type PaperDocument } from './paper-document.ts';
import { asOrnament, drawOnce, type Part, taggedParts } from './tagged-parts.ts';
import { fitShortened, fitText, type PaperFont, POINT, wrapText } from './text-fit.ts';

export interface YardSheetRow {
  readonly code: string;
  readonly doing: string;
  /**
   * A box to be looked into, one to be left shut (in heavy letters, nothing to tick or fill in), or one without a queen;
   * or a hive with a job, whose words take the room of the letters.
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
  readonly yard: string;
  readonly day: string;
  readonly leaveAlone: readonly string[];
  readonly rows: readonly YardSheetRow[];
  /** The coming days on a page of their own; null without it. */
  readonly week: readonly YardSheetDay[] | null;
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
  usual: { row: 11, code: 18, body: 13, small: 10.5, day: 30 },
  large: { row: 15, code: 22, body: 18, small: 13, day: 40 },
} as const;
/** Left edges of the columns, from the left margin. */
const COLUMNS = { tick: 0, code: 7, what: 28, keys: 83, strength: 146, food: 156, number: 166 } as const;
const HEAD_HEIGHT = 38;
const FOOT_HEIGHT = 12;
const CHANCE_ROWS = 4;
/** Where the first row of the week ahead begins. */
const WEEK_TOP = 31;
const RULE = 0.1;
const BOLD_RULE = 0.4;

type Sheet = YardSheetPaper & {
  readonly document: PaperDocument;
  readonly size: (typeof SIZES)[keyof typeof SIZES];
  readonly width: number;
  readonly height: number;
  readonly root: Part;
};

/** One line a box in walking order, to be ringed and ticked in pencil; black only, without fills. */
export async function yardSheetPdf(paper: YardSheetPaper): Promise<{ readonly bytes: Buffer; readonly pages: number }> {
  const document = openPaper({
    title: `${paper.words.yardSheet.title} ${paper.yard}`,
    madeAt: paper.madeAt,
    language: paper.words.language,
    tagged: true,
  });
  const root = taggedParts(document.pdf);
  const sheet = { ...paper, ...PAPERS[paper.paper], document, root, size: paper.large ? SIZES.large : SIZES.usual };
  const perPage = Math.floor((sheet.height - 2 * MARGIN - HEAD_HEIGHT - FOOT_HEIGHT) / sheet.size.row);
  const blank = blankRows(paper.rows.length, perPage);
  const lines: readonly (YardSheetRow | null)[] = [...paper.rows, ...new Array<null>(blank).fill(null)];
  const walkPages = Math.ceil(lines.length / perPage);
  const weekPages = paper.week === null ? [] : intoWeekPages(sheet, paper.week);
  const pages = walkPages + weekPages.length;
  let table: Part | null = null;
  for (let page = 0; page < walkPages; page += 1) {
    const first = page === 0;
    document.addPage(sheet.width, sheet.height);
    drawTitle(sheet, sheet.words.yardSheet.title, first ? { part: root, level: 'H1' } : null);
    drawLeaveAlone(sheet, first ? root : null);
    drawKeys(sheet, first ? root : null);
    table ??= root.inside('Table');
    drawHeads(sheet, first ? table.inside('TR') : null);
    for (const [index, row] of lines.slice(page * perPage, (page + 1) * perPage).entries()) {
      const y = MARGIN + HEAD_HEIGHT + index * sheet.size.row;
      if (row === null) drawBlankRow(sheet, y, lines[page * perPage + index - 1] !== null);
      else drawRow(sheet, row, y, table.inside('TR'));
    }
    drawFoot(sheet, sheet.words.yardSheet.page(page + 1, pages));
  }
  let list: Part | null = null;
  for (const [index, days] of weekPages.entries()) {
    document.addPage(sheet.width, sheet.height);
    drawTitle(sheet, sheet.words.yardSheet.week, index === 0 ? { part: root, level: 'H2' } : null);
    list ??= root.inside('Table');
    drawWeek(sheet, days, list);
    drawFoot(sheet, sheet.words.yardSheet.page(walkPages + index + 1, pages));
  }
  root.close();
  return { bytes: await document.finish(), pages };
}

/** Fewer where the last page has room for two or three: nobody carries a page of two blank lines. */
function blankRows(rows: number, perPage: number): number {
  const left = (perPage - (rows % perPage)) % perPage;
  return left === 2 || left === 3 ? left : CHANCE_ROWS;
}

function drawTitle(
  sheet: Sheet,
  title: string,
  spoken: { readonly part: Part; readonly level: 'H1' | 'H2' } | null,
): void {
  const { document, width } = sheet;
  const room = width - 2 * MARGIN;
  drawOnce(document.pdf, spoken?.part ?? null, spoken?.level ?? 'H2', () => {
    put(sheet, `${title}, ${sheet.yard}`, 'bold', 18, MARGIN, MARGIN + 6, room * 0.55);
    const dayWidth = document.measure(sheet.day, 'bold', 13);
    document.text(sheet.day, 'bold', 13, width - MARGIN - dayWidth, MARGIN + 6);
  });
}

function drawLeaveAlone(sheet: Sheet, part: Part | null): void {
  const { document, size, width } = sheet;
  const room = width - 2 * MARGIN;
  asOrnament(document.pdf, () => {
    blank(sheet, sheet.words.yardSheet.weather, MARGIN, MARGIN + 14, room / 2 - 4);
    blank(sheet, sheet.words.yardSheet.who, MARGIN + room / 2, MARGIN + 14, room / 2);
    document.rectangle(MARGIN, MARGIN + 18, room, 13, BOLD_RULE);
  });
  const shut = sheet.leaveAlone.join('; ');
  const text = shut === '' ? sheet.words.yardSheet.nothingShut : `${sheet.words.yardSheet.leaveAlone}: ${shut}`;
  const wish = { font: 'bold', from: size.body, floor: 9, width: room - 4, lines: 2 } as const;
  const fitted = fitShortened(text, wish, document.measure);
  const line = fitted.points * 1.15 * POINT;
  const top = MARGIN + 24.5 - ((fitted.lines.length - 1) * line) / 2 + fitted.points * 0.33 * POINT;
  drawOnce(document.pdf, part, 'P', () => {
    for (const [index, one] of fitted.lines.entries())
      document.text(one, 'bold', fitted.points, MARGIN + 2, top + index * line);
  });
}

/** Columns that are filled in by pencil have nothing to be read aloud. */
function drawHeads(sheet: Sheet, row: Part | null): void {
  const { document, width } = sheet;
  const { heads } = sheet.words.yardSheet;
  const put = (part: Part | null, head: string, x: number) =>
    drawOnce(
      document.pdf,
      part,
      'TH',
      () => document.text(head, 'regular', 9, MARGIN + x, MARGIN + HEAD_HEIGHT - 1.5),
      { scope: 'Column' },
    );
  put(row, heads.box, COLUMNS.code);
  put(row, heads.what, COLUMNS.what);
  put(null, heads.result, COLUMNS.keys);
  put(null, heads.strength, COLUMNS.strength);
  put(null, heads.food, COLUMNS.food);
  put(null, heads.number, COLUMNS.number);
  asOrnament(document.pdf, () =>
    document.line(MARGIN, MARGIN + HEAD_HEIGHT, width - MARGIN, MARGIN + HEAD_HEIGHT, BOLD_RULE),
  );
}

function drawRow(sheet: Sheet, row: YardSheetRow, y: number, part: Part): void {
  const { document, size } = sheet;
  const middle = y + size.row / 2;
  const onMiddle = (points: number) => middle + points * 0.33 * POINT;
  const code = COLUMNS.what - COLUMNS.code - 2;
  part.draw('TH', () => put(sheet, row.code, 'bold', size.code, MARGIN + COLUMNS.code, onMiddle(size.code), code), {
    scope: 'Row',
  });
  const what = (row.kind === 'hive' ? COLUMNS.strength : COLUMNS.keys) - COLUMNS.what - 2;
  const upper = row.last === '' ? onMiddle(size.body) : middle - 0.6;
  part.draw('TD', () => {
    put(sheet, row.doing, row.kind === 'hands-off' ? 'bold' : 'regular', size.body, MARGIN + COLUMNS.what, upper, what);
    if (row.last !== '') put(sheet, row.last, 'regular', size.small, MARGIN + COLUMNS.what, y + size.row - 1.4, what);
  });
  asOrnament(document.pdf, () => {
    drawRule(sheet, y);
    if (row.kind === 'hands-off') return;
    drawTick(sheet, middle);
    if (row.kind === 'look') drawLetters(sheet, y);
    drawFields(sheet, y);
  });
}

/** For what is found by chance. */
function drawBlankRow(sheet: Sheet, y: number, first: boolean): void {
  const { document, size } = sheet;
  asOrnament(document.pdf, () => {
    drawRule(sheet, y);
    const { byChance } = sheet.words.yardSheet;
    if (first) document.text(byChance, 'regular', size.small, MARGIN + COLUMNS.code, y + size.small * POINT + 1);
    drawTick(sheet, y + size.row / 2);
    drawLetters(sheet, y);
    drawFields(sheet, y);
  });
}

const drawRule = ({ document, size, width }: Sheet, y: number): void =>
  document.line(MARGIN, y + size.row, width - MARGIN, y + size.row, RULE);

const drawTick = ({ document }: Sheet, middle: number): void =>
  document.rectangle(MARGIN + COLUMNS.tick, middle - 2.5, 5, 5, 0.25);

function drawLetters({ document, size, keys }: Sheet, y: number): void {
  const step = (COLUMNS.strength - COLUMNS.keys - 2) / keys.length;
  const up = y + size.row / 2 + size.body * 0.33 * POINT;
  for (const [index, { key }] of keys.entries())
    document.text(key, 'regular', size.body, MARGIN + COLUMNS.keys + index * step, up);
}

const drawLine = ({ document, size }: Sheet, y: number, from: number, to: number): void =>
  document.line(MARGIN + from, y + size.row - 2.2, MARGIN + to, y + size.row - 2.2, RULE);

function drawFields(sheet: Sheet, y: number): void {
  drawLine(sheet, y, COLUMNS.strength, COLUMNS.food - 2);
  drawLine(sheet, y, COLUMNS.food, COLUMNS.number - 2);
  drawLine(sheet, y, COLUMNS.number, sheet.width - 2 * MARGIN);
}

interface WrappedDay {
  readonly day: string;
  readonly jobs: readonly string[];
  readonly leaveAlone: readonly string[];
  readonly height: number;
}

function intoWeekPages(sheet: Sheet, days: readonly YardSheetDay[]): readonly (readonly WrappedDay[])[] {
  const pages: WrappedDay[][] = [[]];
  let y = WEEK_TOP;
  for (const day of days) {
    const wrapped = wrapDay(sheet, day);
    if (y + wrapped.height > sheet.height - MARGIN - FOOT_HEIGHT && pages.at(-1)?.length !== 0) {
      pages.push([]);
      y = WEEK_TOP;
    }
    pages.at(-1)?.push(wrapped);
    y += wrapped.height;
  }
  return pages;
}

const weekRoom = ({ width, size }: Sheet): number => (width - 2 * MARGIN - size.day) * 0.58;
const weekLine = ({ size }: Sheet): number => size.body * 1.2 * POINT;

function wrapDay(sheet: Sheet, { day, jobs, leaveAlone }: YardSheetDay): WrappedDay {
  const { document, size, width } = sheet;
  const wrap = (texts: readonly string[], font: PaperFont, room: number) =>
    texts.flatMap((text) => wrapText(text, font, size.body, room, document.measure));
  const wrapped = {
    jobs: wrap(jobs.length > 0 ? jobs : [sheet.words.yardSheet.noJob], 'regular', weekRoom(sheet) - 4),
    leaveAlone: wrap(leaveAlone, 'bold', width - 2 * MARGIN - size.day - weekRoom(sheet)),
  };
  const lines = Math.max(1, wrapped.jobs.length, wrapped.leaveAlone.length);
  return { day, ...wrapped, height: lines * weekLine(sheet) + 3 };
}

function drawWeek(sheet: Sheet, days: readonly WrappedDay[], table: Part): void {
  const { document, size, width } = sheet;
  const { weekHeads } = sheet.words.yardSheet;
  const places = [0, size.day, size.day + weekRoom(sheet)] as const;
  const heads = table.inside('TR');
  for (const [index, head] of [weekHeads.day, weekHeads.jobs, weekHeads.leaveAlone].entries())
    heads.draw('TH', () => document.text(head, 'regular', 9, MARGIN + (places[index] ?? 0), WEEK_TOP - 1.5), {
      scope: 'Column',
    });
  asOrnament(document.pdf, () => document.line(MARGIN, WEEK_TOP, width - MARGIN, WEEK_TOP, BOLD_RULE));
  let y = WEEK_TOP;
  for (const { day, jobs, leaveAlone, height } of days) {
    const row = table.inside('TR');
    const cell = (type: 'TH' | 'TD', lines: readonly string[], font: PaperFont, x: number) =>
      row.draw(
        type,
        () => {
          for (const [n, line] of lines.entries())
            document.text(line, font, size.body, MARGIN + x, y + 1.5 + size.body * 0.95 * POINT + n * weekLine(sheet));
        },
        type === 'TH' ? { scope: 'Row' } : {},
      );
    cell('TH', [day], 'bold', places[0]);
    cell('TD', jobs, 'regular', places[1]);
    cell('TD', leaveAlone, 'bold', places[2]);
    y += height;
    asOrnament(document.pdf, () => document.line(MARGIN, y, width - MARGIN, y, RULE));
  }
}

/** What the letters stand for, at the foot; read aloud before the rows. */
function drawKeys(sheet: Sheet, part: Part | null): void {
  const { document, width, height } = sheet;
  const list = sheet.keys.map(({ key, result }) => `${key} ${sheet.words.looks[result].name}`).join(', ');
  const wish = { font: 'regular', from: 9, floor: 9, width: width - 2 * MARGIN, lines: 2 } as const;
  const fitted = fitText(sheet.words.yardSheet.keys(list), wish, document.measure);
  drawOnce(document.pdf, part, 'P', () => {
    for (const [index, line] of (fitted?.lines ?? []).entries())
      document.text(line, 'regular', 9, MARGIN, height - MARGIN - 8.4 + index * 3.8);
  });
}

function drawFoot(sheet: Sheet, page: string): void {
  const { document, width, height } = sheet;
  const y = height - MARGIN;
  const pageWidth = document.measure(page, 'regular', 9);
  asOrnament(document.pdf, () => {
    put(sheet, sheet.foot, 'regular', 9, MARGIN, y, width - 2 * MARGIN - pageWidth - 4);
    document.text(page, 'regular', 9, width - MARGIN - pageWidth, y);
  });
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
