import { openPaper } from './paper-document.ts';
import { type Part, taggedParts } from './tagged-parts.ts';
import {
  drawFoot,
  drawKeys,
  drawLeaveAlone,
  drawSquares,
  drawTitle,
  openSheet,
  type Sheet,
  type YardSheetPaper,
  type YardSheetRow,
} from './yard-sheet-frame.ts';
import { drawLines, linesOnPage } from './yard-sheet-lines.ts';
import { drawWeek, intoWeekPages } from './yard-sheet-week.ts';

const CHANCE_ROWS = 4;

/** One line a box or hive in walking order, to be ringed and ticked in pencil; black only, without fills. */
export async function yardSheetPdf(paper: YardSheetPaper): Promise<{ readonly bytes: Buffer; readonly pages: number }> {
  const document = openPaper({
    title: `${paper.words.yardSheet.title} ${paper.yard}`.trim(),
    madeAt: paper.madeAt,
    language: paper.words.language,
    tagged: true,
  });
  const root = taggedParts(document.pdf);
  const sheet = openSheet(paper, document, root);
  const { yardSheet } = sheet.words;
  const fronts = walkPages(sheet);
  const weekPages = paper.week === null ? [] : intoWeekPages(sheet, paper.week);
  const pages = fronts.length * (sheet.squaredBack ? 2 : 1) + weekPages.length;
  // The first of the blank lines says what they are for; on a sheet of nothing else there is no need.
  const chance = sheet.lines === 'blank' ? -1 : sheet.rows.length;
  let page = 0;
  const close = () => {
    page += 1;
    drawFoot(sheet, yardSheet.page(page, pages));
  };
  let table: Part | null = null;
  for (const [index, lines] of fronts.entries()) {
    const first = index === 0;
    document.addPage(sheet.width, sheet.height);
    drawTitle(sheet, yardSheet.titles[sheet.lines], first ? { part: root, level: 'H1' } : null);
    drawLeaveAlone(sheet, first ? root : null);
    drawKeys(sheet, first ? root : null);
    table ??= root.inside('Table');
    drawLines(sheet, lines, { table, first, byChance: chance - index * linesOnPage(sheet) });
    close();
    if (!sheet.squaredBack) continue;
    document.addPage(sheet.width, sheet.height);
    drawSquares(sheet);
    close();
  }
  let list: Part | null = null;
  for (const [index, days] of weekPages.entries()) {
    document.addPage(sheet.width, sheet.height);
    drawTitle(sheet, yardSheet.week, index === 0 ? { part: root, level: 'H2' } : null);
    list ??= root.inside('Table');
    drawWeek(sheet, days, list);
    close();
  }
  root.close();
  return { bytes: await document.finish(), pages };
}

type Lines = readonly (YardSheetRow | null)[];

/** The rows, then blank ones for what is found by chance; a sheet of blank lines fills one page. */
function walkPages(sheet: Sheet): readonly Lines[] {
  const perPage = linesOnPage(sheet);
  const blank = sheet.lines === 'blank' ? perPage : blankRows(sheet.rows.length, perPage);
  const lines = [...sheet.rows, ...new Array<null>(blank).fill(null)];
  return Array.from({ length: Math.ceil(lines.length / perPage) }, (_, page) =>
    lines.slice(page * perPage, (page + 1) * perPage),
  );
}

/** Fewer where the last page has room for two or three: nobody carries a page of two blank lines. */
function blankRows(rows: number, perPage: number): number {
  const left = (perPage - (rows % perPage)) % perPage;
  return left === 2 || left === 3 ? left : CHANCE_ROWS;
}
