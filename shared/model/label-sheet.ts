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

export const LABEL_SHEETS = [
  {
    key: 'a4-3x7-63.5x38.1',
    ...A4,
    columns: 3,
    rows: 7,
    labelWidth: 63.5,
    labelHeight: 38.1,
    left: 7.25,
    top: 15.15,
    pitchX: 66,
    pitchY: 38.1,
  },
  {
    key: 'roll-62',
    paperWidth: 62,
    paperHeight: 40,
    columns: 1,
    rows: 1,
    labelWidth: 62,
    labelHeight: 40,
    left: 0,
    top: 0,
    pitchX: 62,
    pitchY: 40,
  },
] as const satisfies readonly LabelSheet[];

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
