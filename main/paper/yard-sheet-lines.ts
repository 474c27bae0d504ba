import { asOrnament, drawOnce, type Part } from './tagged-parts.ts';
import { fitCut, fitShortened, POINT } from './text-fit.ts';
import { BOLD_RULE, drawRule, HEAD_HEIGHT, MARGIN, put, type Sheet, type YardSheetRow } from './yard-sheet-frame.ts';

/** How a line lies on the paper: millimetres from its upper left corner, sizes in points. */
interface Layout {
  /** Side by side; the walk goes down the first, then down the second. */
  readonly columns: 1 | 2;
  /** At least 10 mm for pencil. */
  readonly row: number;
  readonly code: number;
  readonly codePoints: number;
  readonly what: number;
  readonly body: number;
  readonly small: number;
  readonly letters: number;
  /** How far down what is filled in by pencil begins; 0 = beside the words, as on a sheet with one column. */
  readonly below: number;
  readonly keys: number;
  readonly strength: number;
  readonly food: number;
  readonly note: number;
}

const GAP = 8;
const USUAL = {
  columns: 1,
  ...{ row: 11, code: 7, codePoints: 18, what: 24, body: 13, small: 10.5, letters: 13 },
  ...{ below: 0, keys: 81 },
} as const;
/** More lines on a page: what is filled in stands under the words. */
const TWO = {
  columns: 2,
  ...{ row: 14.6, code: 6.5, codePoints: 16, what: 22, body: 11, small: 9, letters: 12 },
  ...{ below: 8.8, keys: 0 },
} as const;
/** Words in 18 pt take the width of the paper, so here too. */
const LARGE = {
  columns: 1,
  ...{ row: 24.5, code: 8, codePoints: 22, what: 34, body: 18, small: 13, letters: 18 },
  ...{ below: 14.4, keys: 0 },
} as const;

/** A sheet without letters to ring gives their room to the words or to the pencil. */
function layoutOf({ large, columns, keys }: Sheet): Layout {
  const letters = keys.length > 0;
  if (large)
    return { ...LARGE, ...(letters ? { strength: 92, food: 112, note: 132 } : { strength: 0, food: 22, note: 44 }) };
  if (columns === 2)
    return { ...TWO, ...(letters ? { strength: 52, food: 62.5, note: 73 } : { strength: 0, food: 12, note: 24 }) };
  return {
    ...USUAL,
    ...(letters ? { strength: 137, food: 148, note: 159 } : { strength: 97, food: 108.5, note: 120 }),
  };
}

const roomOf = ({ width }: Sheet, { columns }: Layout): number => (width - 2 * MARGIN - (columns - 1) * GAP) / columns;

const down = (sheet: Sheet): number =>
  Math.floor((sheet.height - 2 * MARGIN - HEAD_HEIGHT - sheet.size.foot) / layoutOf(sheet).row);

/** So many lines have room on a page. */
export const linesOnPage = (sheet: Sheet): number => down(sheet) * layoutOf(sheet).columns;

/** One page of lines; null stands for a blank one, and the one with the number `byChance` says what they are for. */
export function drawLines(
  sheet: Sheet,
  lines: readonly (YardSheetRow | null)[],
  { table, first, byChance }: { readonly table: Part; readonly first: boolean; readonly byChance: number },
): void {
  const layout = layoutOf(sheet);
  const used = Math.ceil(lines.length / down(sheet));
  drawHeads(sheet, layout, used, first && layout.below === 0 ? table.inside('TR') : null);
  for (const [index, row] of lines.entries()) {
    const column = Math.floor(index / down(sheet));
    const x = MARGIN + column * (roomOf(sheet, layout) + GAP);
    const y = MARGIN + HEAD_HEIGHT + (index - column * down(sheet)) * layout.row;
    if (row === null) drawBlankRow(sheet, layout, x, y, index === byChance);
    else drawRow(sheet, layout, row, x, y, table.inside('TR'));
  }
}

/** Columns that are filled in by pencil have nothing to be read aloud. */
function drawHeads(sheet: Sheet, layout: Layout, used: number, row: Part | null): void {
  const { document, size, keys, words, lines } = sheet;
  const { heads } = words.yardSheet;
  const room = roomOf(sheet, layout);
  const y = MARGIN + HEAD_HEIGHT;
  const beside = layout.below === 0;
  for (let column = 0; column < used; column += 1) {
    const left = MARGIN + column * (room + GAP);
    const head = (part: Part | null, text: string, x: number) =>
      drawOnce(document.pdf, part, 'TH', () => document.text(text, 'regular', size.head, left + x, y - 1.5), {
        scope: 'Column',
      });
    if (beside) {
      head(row, lines === 'hives' ? heads.hive : heads.box, 0);
      head(row, lines === 'hives' ? heads.known : heads.what, layout.what);
    }
    if (keys.length > 0) head(null, heads.result, layout.keys);
    head(null, heads.strength, layout.strength);
    head(null, heads.food, layout.food);
    head(null, keys.length === 0 ? heads.seen : layout.columns === 2 ? heads.numberShort : heads.number, layout.note);
    asOrnament(document.pdf, () => document.line(left, y, left + room, y, BOLD_RULE));
  }
}

function drawRow(sheet: Sheet, layout: Layout, row: YardSheetRow, x: number, y: number, part: Part): void {
  const beside = layout.below === 0;
  const words = beside ? layout.row : layout.below;
  const onMiddle = (points: number) => y + words / 2 + points * 0.33 * POINT;
  const right = beside ? (row.kind === 'hive' ? layout.strength : layout.keys) : roomOf(sheet, layout) + 2;
  const room = right - layout.what - 2;
  part.draw(
    'TH',
    () =>
      put(
        sheet,
        row.code,
        'bold',
        layout.codePoints,
        x + layout.code,
        onMiddle(layout.codePoints),
        layout.what - layout.code - 1.5,
      ),
    { scope: 'Row' },
  );
  const upper = row.last === '' ? onMiddle(layout.body) : y + words / 2 - (beside ? 0.6 : 0.2);
  part.draw('TD', () => {
    put(sheet, row.doing, row.kind === 'hands-off' ? 'bold' : 'regular', layout.body, x + layout.what, upper, room);
    if (row.last !== '')
      put(
        sheet,
        row.last,
        'regular',
        layout.small,
        x + layout.what,
        y + words - (beside ? 1.4 : 0.6),
        room,
        row.kind === 'hive' ? fitCut : fitShortened,
      );
  });
  asOrnament(sheet.document.pdf, () => {
    drawUnder(sheet, layout, x, y);
    if (row.kind === 'hands-off') return;
    drawTick(sheet, x, y + words / 2);
    if (row.kind === 'look') drawLetters(sheet, layout, x, y);
    drawFields(sheet, layout, x, y);
  });
}

/** For what is found by chance, or for whatever is met on a sheet of blank lines. */
function drawBlankRow(sheet: Sheet, layout: Layout, x: number, y: number, named: boolean): void {
  const { document, words } = sheet;
  const upper = layout.below === 0 ? layout.row : layout.below;
  asOrnament(document.pdf, () => {
    drawUnder(sheet, layout, x, y);
    if (named)
      document.text(words.yardSheet.byChance, 'regular', layout.small, x + layout.code, y + layout.small * POINT + 1);
    drawTick(sheet, x, y + upper / 2);
    drawLetters(sheet, layout, x, y);
    drawFields(sheet, layout, x, y);
  });
}

const drawUnder = (sheet: Sheet, layout: Layout, x: number, y: number): void =>
  drawRule(sheet, x, y + layout.row, x + roomOf(sheet, layout), y + layout.row);

const drawTick = ({ document }: Sheet, x: number, middle: number): void =>
  document.rectangle(x, middle - 2.5, 5, 5, 0.25);

function drawLetters({ document, keys }: Sheet, layout: Layout, x: number, y: number): void {
  const step = (layout.strength - layout.keys - 1) / keys.length;
  const up = y + (layout.below + layout.row) / 2 - (layout.below === 0 ? 0 : 0.3) + layout.letters * 0.33 * POINT;
  for (const [index, { key }] of keys.entries())
    document.text(key, 'regular', layout.letters, x + layout.keys + index * step, up);
}

function drawFields(sheet: Sheet, layout: Layout, x: number, y: number): void {
  const up = y + layout.row - 2.2;
  const line = (from: number, to: number) => drawRule(sheet, x + from, up, x + to, up);
  line(layout.strength, layout.food - 2);
  line(layout.food, layout.note - 2);
  line(layout.note, roomOf(sheet, layout));
}
