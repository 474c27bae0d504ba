import { type Day, daysBetween } from '../../shared/kernel/day.ts';
import { type DateOrder, fullDay, paperDay } from '../../shared/text/day-text.ts';
import type { Words } from '../../shared/text/english/english.ts';
import { hatch } from './hatch.ts';
import { openPaper, type PaperDocument } from './paper-document.ts';
import { asOrnament, drawOnce, type Part, taggedParts } from './tagged-parts.ts';
import { type PaperFont, POINT, wrapText } from './text-fit.ts';

export interface HandoutRow {
  readonly day: Day;
  readonly daysAfterLarvae: number;
  readonly title: string;
  readonly what: string;
  readonly handsOff: boolean;
}

export interface Handout {
  /** In the language of the workbook. */
  readonly words: Words;
  readonly method: string;
  readonly firstDay: Day;
  readonly larvaeGivenOn: Day;
  readonly rows: readonly HandoutRow[];
  readonly handsOff: readonly { readonly from: Day; readonly to: Day }[];
  readonly emergence: { readonly earliest: Day; readonly latest: Day };
  readonly sources: string;
  /** With dates; for any year by day numbers; or with gaps that the class fills in. */
  readonly variant: 'dates' | 'day-numbers' | 'gaps';
  readonly paper: 'a4' | 'letter';
  readonly dateOrder: DateOrder;
  readonly madeAt: string;
}

/** Landscape, millimetres: ISO 216 A4, ANSI/ASME Y14.1 letter. */
const PAPERS = { a4: { width: 297, height: 210 }, letter: { width: 279.4, height: 215.9 } } as const;
const MARGIN = 12;
/** 12 pt is read with ease at a table (ISO 9241-3, 22 minutes of arc at 40 cm is 10.4 pt). */
const TITLE = 20;
const BODY = 12;
const SMALL = 9;
const LINE = 1.2;
const CELL_AIR = 1.6;
const COLUMNS = { day: 0, number: 32, step: 46, what: 100 } as const;
/** Room at the right for the class's own remarks. */
const NOTES = 38;
const FIRST_TABLE_TOP = 58;
const NEXT_TABLE_TOP = 27;
/** Page line; the sources stand above it on the last page. */
const FOOT = 7;
const SOURCE_LINE = 4;
const RULE = 0.1;

interface Sheet {
  readonly handout: Handout;
  readonly document: PaperDocument;
  readonly width: number;
  readonly height: number;
  readonly root: Part;
}

interface Wrapped {
  readonly row: HandoutRow;
  readonly title: readonly string[];
  readonly what: readonly string[];
  readonly height: number;
}

/** The timetable of a method for the class or the wall: black only, no data of anybody. */
export async function timetablePdf(handout: Handout): Promise<{ readonly bytes: Buffer; readonly pages: number }> {
  const document = openPaper({
    title: handout.words.handout.title(handout.method),
    madeAt: handout.madeAt,
    language: handout.words.language,
    tagged: true,
  });
  const root = taggedParts(document.pdf);
  const sheet = { handout, document, root, ...PAPERS[handout.paper] };
  const pages = intoPages(sheet);
  let table: Part | null = null;
  for (const [index, rows] of pages.entries()) {
    document.addPage(sheet.width, sheet.height);
    const first = index === 0;
    drawOnce(document.pdf, first ? root : null, 'H1', () =>
      document.text(handout.words.handout.title(handout.method), 'bold', TITLE, MARGIN, MARGIN + 6),
    );
    drawStart(sheet, first ? root : null);
    if (first) root.draw('Figure', () => drawRuler(sheet), { alt: handout.words.handout.ruler });
    table ??= root.inside('Table');
    drawTable(sheet, rows, table, first);
    drawFoot(sheet, handout.words.handout.page(index + 1, pages.length), index === pages.length - 1);
  }
  root.close();
  return { bytes: await document.finish(), pages: pages.length };
}

/** As many rows as a page holds; on the last one the sources need room below them, so a row may move on. */
function intoPages(sheet: Sheet): readonly (readonly Wrapped[])[] {
  const pages: Wrapped[][] = [[]];
  const sources = sourceLines(sheet).length * SOURCE_LINE;
  let y = FIRST_TABLE_TOP;
  for (const [index, row] of sheet.handout.rows.entries()) {
    const wrapped = wrapRow(sheet, row);
    const last = index === sheet.handout.rows.length - 1;
    if (y + wrapped.height > sheet.height - MARGIN - FOOT - (last ? sources : 0)) {
      pages.push([]);
      y = NEXT_TABLE_TOP;
    }
    pages.at(-1)?.push(wrapped);
    y += wrapped.height;
  }
  return pages;
}

function wrapRow({ document, width }: Sheet, row: HandoutRow): Wrapped {
  const { measure } = document;
  const title = wrapText(row.title, 'bold', BODY, COLUMNS.what - COLUMNS.step - 3, measure);
  const what = wrapText(row.what, 'regular', BODY, width - 2 * MARGIN - COLUMNS.what - NOTES - 3, measure);
  const lines = Math.max(title.length, what.length);
  return { row, title, what, height: lines * BODY * LINE * POINT + 2 * CELL_AIR };
}

/** All days in a row: ticks, the days to keep hands off hatched, and the days on which queens may emerge. */
function drawRuler({ handout, document, width }: Sheet): void {
  const { rows, firstDay } = handout;
  const last = Math.max(firstDay + 1, ...rows.map(({ day }) => day), ...handout.handsOff.map(({ to }) => to)) as Day;
  const step = (width - 2 * MARGIN) / (daysBetween(firstDay, last) + 1);
  const left = (day: Day): number => MARGIN + daysBetween(firstDay, day) * step;
  const [top, height] = [28, 8];
  for (let day = firstDay; day <= last; day = (day + 1) as Day) {
    document.line(left(day), top, left(day), top + height, RULE);
    const after = daysBetween(handout.larvaeGivenOn, day);
    if (after % 5 === 0) document.text(String(after), 'regular', SMALL, left(day) + 0.6, top + height + 4);
  }
  for (const { from, to } of handout.handsOff)
    hatch(document, [{ x: left(from), width: (daysBetween(from, to) + 1) * step }], top, height);
  const { earliest, latest } = handout.emergence;
  const window = (daysBetween(earliest, latest) + 1) * step;
  document.rectangle(left(earliest), top - 2, window, height + 4, 0.6);
  document.rectangle(MARGIN, top, width - 2 * MARGIN, height, 0.3);
  for (const row of rows) document.line(left(row.day) + step / 2, top - 1.5, left(row.day) + step / 2, top + 2, 0.5);
  document.text(handout.words.handout.ruler, 'regular', SMALL, MARGIN, top + height + 9);
}

function drawTable({ handout, document, width }: Sheet, rows: readonly Wrapped[], table: Part, first: boolean): void {
  const { columns } = handout.words.handout;
  const notes = width - MARGIN - NOTES;
  const top = first ? FIRST_TABLE_TOP : NEXT_TABLE_TOP;
  const heads = first ? table.inside('TR') : null;
  for (const [head, x] of [
    [columns.day, MARGIN + COLUMNS.day],
    [columns.number, MARGIN + COLUMNS.number],
    [columns.step, MARGIN + COLUMNS.step],
    [columns.what, MARGIN + COLUMNS.what],
    [columns.notes, notes],
  ] as const)
    drawOnce(document.pdf, heads, 'TH', () => document.text(head, 'regular', SMALL, x, top - 1.5), { scope: 'Column' });
  asOrnament(document.pdf, () => document.line(MARGIN, top, width - MARGIN, top, 0.4));
  let y = top;
  for (const wrapped of rows) {
    drawRow(document, handout, wrapped, { y, notes, row: table.inside('TR') });
    y += wrapped.height;
    asOrnament(document.pdf, () => document.line(MARGIN, y, width - MARGIN, y, RULE));
  }
}

/** Every row has as many cells as the head, also where a cell is a line to write on. */
function drawRow(
  document: PaperDocument,
  { variant, dateOrder, words }: Handout,
  { row: step, title, what, height }: Wrapped,
  { y, notes, row }: { readonly y: number; readonly notes: number; readonly row: Part },
): void {
  const baseline = y + CELL_AIR + BODY * 0.86 * POINT;
  const line = BODY * LINE * POINT;
  const put = (type: 'TH' | 'TD', texts: readonly string[], font: PaperFont, x: number) =>
    row.draw(
      type,
      () => {
        for (const [n, text] of texts.entries()) document.text(text, font, BODY, x, baseline + n * line);
      },
      type === 'TH' ? { scope: 'Row' } : {},
    );
  const blank = (x: number, room: number) =>
    row.draw('TD', () => document.line(x, baseline + 0.6, x + room, baseline + 0.6, RULE));
  if (variant === 'dates') put('TD', [paperDay(step.day, dateOrder, words.language)], 'bold', MARGIN);
  else blank(MARGIN, COLUMNS.number - 4);
  if (variant === 'gaps') blank(MARGIN + COLUMNS.number, 10);
  else put('TD', [String(step.daysAfterLarvae)], 'regular', MARGIN + COLUMNS.number);
  if (step.handsOff)
    asOrnament(document.pdf, () =>
      hatch(document, [{ x: MARGIN + COLUMNS.step - 4, width: 2.6 }], y + 0.6, height - 1.2),
    );
  put('TH', title, 'bold', MARGIN + COLUMNS.step);
  put('TD', what, 'regular', MARGIN + COLUMNS.what);
  blank(notes, NOTES);
}

/** From which day the days are counted, and the caution; at the foot of each page, read aloud before the table. */
function drawStart({ handout, document, height }: Sheet, part: Part | null): void {
  const { handout: said, language } = handout.words;
  const start =
    handout.variant === 'dates'
      ? said.start(fullDay(handout.larvaeGivenOn, handout.dateOrder, language))
      : said.noStart;
  drawOnce(document.pdf, part, 'P', () =>
    document.text(`${start} ${said.caution}`, 'regular', SMALL, MARGIN, height - MARGIN),
  );
}

function sourceLines({ handout, document, width }: Sheet): readonly string[] {
  const said = handout.words.handout.sources(handout.sources);
  return wrapText(said, 'regular', SMALL, width - 2 * MARGIN, document.measure);
}

function drawFoot(sheet: Sheet, page: string, last: boolean): void {
  const { document, root, width, height } = sheet;
  const y = height - MARGIN;
  if (last) {
    const sources = sourceLines(sheet);
    root.draw('P', () => {
      for (const [n, line] of sources.entries())
        document.text(line, 'regular', SMALL, MARGIN, y - 5 - (sources.length - 1 - n) * SOURCE_LINE);
    });
  }
  const pageWidth = document.measure(page, 'regular', SMALL);
  asOrnament(document.pdf, () => document.text(page, 'regular', SMALL, width - MARGIN - pageWidth, y));
}
