/** A sheet or roll of labels by its measures alone, in millimetres. */
export interface LabelSheet {
  readonly key: string;
  readonly paperWidth: number;
  readonly paperHeight: number;
  readonly columns: number;
  readonly rows: number;
  readonly labelWidth: number;
  readonly labelHeight: number;
  /** Left and upper edge of the first label. */
  readonly left: number;
  readonly top: number;
  readonly pitchX: number;
  readonly pitchY: number;
}

/** ISO 216. */
const A4 = { paperWidth: 210, paperHeight: 297 };
/** ANSI/ASME Y14.1 size A, 8 1/2 x 11 inches of 25.4 mm. */
const LETTER = { paperWidth: 215.9, paperHeight: 279.4 };

/** Labels of these sizes, so many across and down, as a grid in the middle of the paper. Pitch = label where they touch. */
function centred<Key extends string>(
  key: Key,
  paper: typeof A4,
  [columns, rows]: readonly [number, number],
  [labelWidth, labelHeight]: readonly [number, number],
  [pitchX, pitchY]: readonly [number, number] = [labelWidth, labelHeight],
): LabelSheet & { readonly key: Key } {
  const middle = (whole: number, used: number): number => Math.round((whole - used) * 500) / 1000;
  return {
    key,
    ...paper,
    columns,
    rows,
    labelWidth,
    labelHeight,
    left: middle(paper.paperWidth, (columns - 1) * pitchX + labelWidth),
    top: middle(paper.paperHeight, (rows - 1) * pitchY + labelHeight),
    pitchX,
    pitchY,
  };
}

/** One label a page, the page being the label. */
const roll = <Key extends string>(key: Key, width: number, height: number): LabelSheet & { readonly key: Key } =>
  centred(key, { paperWidth: width, paperHeight: height }, [1, 1], [width, height]);

/**
 * Usual sizes, common practice. Sheets of one nominal size differ by some tenths of a millimetre and sometimes in where
 * the first label begins, so a print on plain paper is held against the sheet first.
 */
export const LABEL_SHEETS = [
  centred('a4-3x7-63.5x38.1', A4, [3, 7], [63.5, 38.1], [66, 38.1]),
  centred('a4-2x7-99.1x38.1', A4, [2, 7], [99.1, 38.1], [101.6, 38.1]),
  centred('a4-3x8-63.5x33.9', A4, [3, 8], [63.5, 33.9], [66, 33.9]),
  centred('a4-3x8-70x36', A4, [3, 8], [70, 36]),
  centred('a4-3x8-70x37', A4, [3, 8], [70, 37]),
  centred('a4-3x6-63.5x46.6', A4, [3, 6], [63.5, 46.6], [66, 46.6]),
  centred('a4-2x4-99.1x67.7', A4, [2, 4], [99.1, 67.7], [101.6, 67.7]),
  centred('a4-4x10-48.5x25.4', A4, [4, 10], [48.5, 25.4]),
  centred('a4-4x12-45.7x21.2', A4, [4, 12], [45.7, 21.2], [48.2, 21.2]),
  centred('a4-5x13-38.1x21.2', A4, [5, 13], [38.1, 21.2], [40.6, 21.2]),
  // 2 5/8 x 1 inch, 4 x 1 1/3 and 4 x 2 inch.
  centred('letter-3x10-66.7x25.4', LETTER, [3, 10], [66.675, 25.4], [69.85, 25.4]),
  centred('letter-2x7-101.6x33.9', LETTER, [2, 7], [101.6, 33.8667], [106.3625, 33.8667]),
  centred('letter-2x5-101.6x50.8', LETTER, [2, 5], [101.6, 50.8], [106.3625, 50.8]),
  /** Continuous; the printer cuts where the page ends. */
  roll('roll-62', 62, 40),
  roll('roll-57x32', 57, 32),
  roll('roll-62x29', 62, 29),
  roll('roll-89x36', 89, 36),
  roll('roll-89x28', 89, 28),
] as const;

export type LabelSheetKey = (typeof LABEL_SHEETS)[number]['key'];

export function labelSheet(key: LabelSheetKey): LabelSheet {
  const sheet = LABEL_SHEETS.find((one) => one.key === key);
  if (!sheet) throw new Error(`no label sheet ${key}`);
  return sheet;
}

export const labelsOnSheet = (sheet: LabelSheet): number => sheet.columns * sheet.rows;

/** Upper left corner of label n (from 0) on its own sheet, row by row, and which sheet it is on. */
export function labelPlace(
  sheet: LabelSheet,
  index: number,
): { readonly page: number; readonly x: number; readonly y: number } {
  const onSheet = index % labelsOnSheet(sheet);
  const column = onSheet % sheet.columns;
  const row = Math.floor(onSheet / sheet.columns);
  return {
    page: Math.floor(index / labelsOnSheet(sheet)),
    x: sheet.left + column * sheet.pitchX,
    y: sheet.top + row * sheet.pitchY,
  };
}

/** Play of cutting and feeding, and the edge that office printers leave blank (common practice, no source). */
const LABEL_MARGIN = 2;
const PAPER_EDGE = 5;

export interface LabelInsets {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How far words keep from the label's edges: the same for all labels of a sheet, so that they look alike. */
export function labelInsets(sheet: LabelSheet): LabelInsets {
  if (labelsOnSheet(sheet) === 1)
    return { left: LABEL_MARGIN, right: LABEL_MARGIN, top: LABEL_MARGIN, bottom: LABEL_MARGIN };
  const side = Math.max(LABEL_MARGIN, PAPER_EDGE - sheet.left);
  const end = Math.max(LABEL_MARGIN, PAPER_EDGE - sheet.top);
  return { left: side, right: side, top: end, bottom: end };
}
