import { asOrnament, type Part } from './tagged-parts.ts';
import { type PaperFont, POINT, wrapText } from './text-fit.ts';
import { BOLD_RULE, drawRule, MARGIN, type Sheet, type YardSheetDay } from './yard-sheet-frame.ts';

/** Where the first row of the week ahead begins. */
const WEEK_TOP = 31;

export interface WrappedDay {
  readonly day: string;
  readonly jobs: readonly string[];
  readonly leaveAlone: readonly string[];
  readonly height: number;
}

export function intoWeekPages(sheet: Sheet, days: readonly YardSheetDay[]): readonly (readonly WrappedDay[])[] {
  const pages: WrappedDay[][] = [[]];
  let y = WEEK_TOP;
  for (const day of days) {
    const wrapped = wrapDay(sheet, day);
    if (y + wrapped.height > sheet.height - MARGIN - sheet.size.foot && pages.at(-1)?.length !== 0) {
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

/** The coming days, each with its jobs and what must be left alone. */
export function drawWeek(sheet: Sheet, days: readonly WrappedDay[], table: Part): void {
  const { document, size, width } = sheet;
  const { weekHeads } = sheet.words.yardSheet;
  const places = [0, size.day, size.day + weekRoom(sheet)] as const;
  const heads = table.inside('TR');
  for (const [index, head] of [weekHeads.day, weekHeads.jobs, weekHeads.leaveAlone].entries())
    heads.draw('TH', () => document.text(head, 'regular', size.head, MARGIN + (places[index] ?? 0), WEEK_TOP - 1.5), {
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
    asOrnament(document.pdf, () => drawRule(sheet, MARGIN, y, width - MARGIN, y));
  }
}
