import { z } from 'zod';
import { NameField } from './fields.ts';
import { type LabelSheet, labelInsets } from './label-sheet.ts';

const Millimetres = (least: number, most: number) => z.number().min(least).max(most);

/** A sheet of labels with the person's own measures, in millimetres. */
export const OwnLabelSheet = z.object({
  key: z.string().regex(/^own-[A-Za-z0-9-]{1,60}$/),
  name: NameField,
  paperWidth: Millimetres(30, 330),
  paperHeight: Millimetres(20, 500),
  columns: z.int().min(1).max(12),
  rows: z.int().min(1).max(40),
  labelWidth: Millimetres(1, 330),
  labelHeight: Millimetres(1, 500),
  left: Millimetres(0, 200),
  top: Millimetres(0, 200),
  pitchX: Millimetres(1, 330),
  pitchY: Millimetres(1, 500),
});
export type OwnLabelSheet = z.infer<typeof OwnLabelSheet>;

/** The least room inside the insets for a box number, a batch and the hands-off day (tried with the widest letters). */
export const LEAST_ROOM = { width: 30, height: 15 } as const;
/** Sheets are measured by ruler; a twentieth of a millimetre is no overlap. */
const PLAY = 0.05;

export interface SheetTrouble {
  readonly field: 'labelWidth' | 'labelHeight' | 'pitchX' | 'pitchY' | 'columns' | 'rows';
  readonly trouble: 'too-small' | 'overlap' | 'beyond-paper';
  /** What is missing or too much. */
  readonly millimetres: number;
}

/** The first thing that cannot be true of a sheet, or null: labels overlap, run over the paper, or are too small to print on. */
export function sheetTrouble(sheet: LabelSheet): SheetTrouble | null {
  const { columns, rows, labelWidth, labelHeight, pitchX, pitchY } = sheet;
  const inset = labelInsets(sheet);
  const [roomX, roomY] = [labelWidth - inset.left - inset.right, labelHeight - inset.top - inset.bottom];
  const right = sheet.left + (columns - 1) * pitchX + labelWidth;
  const bottom = sheet.top + (rows - 1) * pitchY + labelHeight;
  const overlapX = columns > 1 ? labelWidth - pitchX : 0;
  const overlapY = rows > 1 ? labelHeight - pitchY : 0;
  const checks: readonly (SheetTrouble & { readonly play: number })[] = [
    { field: 'labelWidth', trouble: 'too-small', millimetres: LEAST_ROOM.width - roomX, play: 0 },
    { field: 'labelHeight', trouble: 'too-small', millimetres: LEAST_ROOM.height - roomY, play: 0 },
    { field: 'pitchX', trouble: 'overlap', millimetres: overlapX, play: PLAY },
    { field: 'pitchY', trouble: 'overlap', millimetres: overlapY, play: PLAY },
    { field: 'columns', trouble: 'beyond-paper', millimetres: right - sheet.paperWidth, play: PLAY },
    { field: 'rows', trouble: 'beyond-paper', millimetres: bottom - sheet.paperHeight, play: PLAY },
  ];
  const found = checks.find(({ millimetres, play }) => millimetres > play);
  if (!found) return null;
  return { field: found.field, trouble: found.trouble, millimetres: Math.round(found.millimetres * 100) / 100 };
}
