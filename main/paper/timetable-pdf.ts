import { fullDay, paperDay } from '../../shared/text/day-text.ts';
import { hatch } from './hatch.ts';
import { openPaper, type PaperDocument } from './paper-document.ts';
import { asOrnament, drawOnce, type Part, taggedParts } from './tagged-parts.ts';
import { type PaperFont, POINT, wrapText } from './text-fit.ts';
import { type Handout, type HandoutRow, MARGIN, RULE, type Sheet, SMALL } from './timetable-frame.ts';
import { drawStream, pictureInWords } from './timetable-stream.ts';

/** Landscape, millimetres: ISO 216 A4, ANSI/ASME Y14.1 letter. */
const PAPERS = { a4: { width: 297, height: 210 }, letter: { width: 279.4, height: 215.9 } } as const;
/** 12 pt is read with ease at a table (ISO 9241-3, 22 minutes of arc at 40 cm is 10.4 pt). */
const TITLE = 20;
const BODY = 12;
const LINE = 1.2;
const CELL_AIR = 1.2;
const COLUMNS = { day: 0, number: 27, bees: 37, step: 69, what: 115 } as const;
/** Room at the right for the class's own remarks. */
const NOTES = 28;
const FIRST_TABLE_TOP = 57;
const NEXT_TABLE_TOP = 27;
/** The caution and the page line. */
const FOOT = 11;
const SMALL_LINE = 4;
/** For “page 2 of 3” beside the caution. */
const PAGE_ROOM = 24;

interface Wrapped {
  readonly row: HandoutRow;
  readonly bees: readonly string[];
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
    if (first) root.draw('Figure', () => drawStream(sheet), { alt: pictureInWords(handout) });
    table ??= root.inside('Table');
    drawTable(sheet, rows, table, first);
    drawFoot(sheet, handout.words.handout.page(index + 1, pages.length + 1));
  }
  document.addPage(sheet.width, sheet.height);
  drawGlossary(sheet);
  drawSources(sheet);
  drawFoot(sheet, handout.words.handout.page(pages.length + 1, pages.length + 1));
  root.close();
  return { bytes: await document.finish(), pages: pages.length + 1 };
}

/** As many rows as a page holds. */
function intoPages(sheet: Sheet): readonly (readonly Wrapped[])[] {
  const pages: Wrapped[][] = [[]];
  let y = FIRST_TABLE_TOP;
  for (const row of sheet.handout.rows) {
    const wrapped = wrapRow(sheet, row);
    if (y + wrapped.height > sheet.height - MARGIN - FOOT) {
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
  const bees = wrapText(row.bees, 'regular', BODY, COLUMNS.step - COLUMNS.bees - 6, measure);
  const title = wrapText(row.title, 'bold', BODY, COLUMNS.what - COLUMNS.step - 3, measure);
  const what = wrapText(row.what, 'regular', BODY, width - 2 * MARGIN - COLUMNS.what - NOTES - 3, measure);
  const lines = Math.max(bees.length, title.length, what.length);
  return { row, bees, title, what, height: lines * BODY * LINE * POINT + 2 * CELL_AIR };
}

function drawTable({ handout, document, width }: Sheet, rows: readonly Wrapped[], table: Part, first: boolean): void {
  const { columns } = handout.words.handout;
  const notes = width - MARGIN - NOTES;
  const top = first ? FIRST_TABLE_TOP : NEXT_TABLE_TOP;
  const heads = first ? table.inside('TR') : null;
  for (const [head, x] of [
    [columns.day, MARGIN + COLUMNS.day],
    [columns.number, MARGIN + COLUMNS.number],
    [columns.bees, MARGIN + COLUMNS.bees],
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
  { row: step, bees, title, what, height }: Wrapped,
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
  if (variant === 'gaps') blank(MARGIN + COLUMNS.number, 7);
  else put('TD', [String(step.daysAfterLarvae)], 'regular', MARGIN + COLUMNS.number);
  put('TD', bees, 'regular', MARGIN + COLUMNS.bees);
  if (step.handsOff)
    asOrnament(document.pdf, () =>
      hatch(document, [{ x: MARGIN + COLUMNS.step - 4, width: 2.6 }], y + 0.6, height - 1.2),
    );
  put('TH', title, 'bold', MARGIN + COLUMNS.step);
  put('TD', what, 'regular', MARGIN + COLUMNS.what);
  blank(notes, NOTES);
}

/** The words on the back. */
function drawGlossary({ handout, document, root, width }: Sheet): void {
  const { classPapers } = handout.words;
  root.draw('H2', () => document.text(classPapers.glossary.title, 'bold', TITLE, MARGIN, MARGIN + 6));
  const table = root.inside('Table');
  const heads = table.inside('TR');
  let y = NEXT_TABLE_TOP;
  const meaning = MARGIN + 58;
  for (const [head, x] of [
    [classPapers.glossary.columns.word, MARGIN],
    [classPapers.glossary.columns.meaning, meaning],
  ] as const)
    heads.draw('TH', () => document.text(head, 'regular', SMALL, x, y - 1.5), { scope: 'Column' });
  asOrnament(document.pdf, () => document.line(MARGIN, y, width - MARGIN, y, 0.4));
  const line = BODY * LINE * POINT;
  for (const one of handout.glossary) {
    const row = table.inside('TR');
    const lines = wrapText(one.meaning, 'regular', BODY, width - MARGIN - meaning, document.measure);
    const up = y + CELL_AIR + BODY * 0.86 * POINT;
    row.draw('TH', () => document.text(one.word, 'bold', BODY, MARGIN, up), { scope: 'Row' });
    row.draw('TD', () => {
      for (const [n, text] of lines.entries()) document.text(text, 'regular', BODY, meaning, up + n * line);
    });
    y += lines.length * line + 2 * CELL_AIR;
    asOrnament(document.pdf, () => document.line(MARGIN, y, width - MARGIN, y, RULE));
  }
}

/** From which day the days are counted, and the caution; at the foot of each page, read aloud before the table. */
function drawStart({ handout, document, width, height }: Sheet, part: Part | null): void {
  const { handout: said, language } = handout.words;
  const start =
    handout.variant === 'dates'
      ? said.start(fullDay(handout.larvaeGivenOn, handout.dateOrder, language))
      : said.noStart;
  const lines = wrapText(
    `${start} ${said.caution}`,
    'regular',
    SMALL,
    width - 2 * MARGIN - PAGE_ROOM,
    document.measure,
  );
  drawOnce(document.pdf, part, 'P', () => {
    for (const [n, line] of lines.entries())
      document.text(line, 'regular', SMALL, MARGIN, height - MARGIN - (lines.length - 1 - n) * SMALL_LINE);
  });
}

/** Where the days come from; stands under the words on the last page. */
function drawSources({ handout, document, root, width, height }: Sheet): void {
  const said = handout.words.handout.sources(handout.sources);
  const lines = wrapText(said, 'regular', SMALL, width - 2 * MARGIN, document.measure);
  root.draw('P', () => {
    for (const [n, line] of lines.entries())
      document.text(line, 'regular', SMALL, MARGIN, height - MARGIN - FOOT + 3 - (lines.length - 1 - n) * SMALL_LINE);
  });
}

function drawFoot({ document, width, height }: Sheet, page: string): void {
  const pageWidth = document.measure(page, 'regular', SMALL);
  asOrnament(document.pdf, () => document.text(page, 'regular', SMALL, width - MARGIN - pageWidth, height - MARGIN));
}
