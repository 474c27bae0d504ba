import type { LookRow } from '../../../shared/contract/boxes.ts';
import { firstOpenRow, START } from './look-grid-state.ts';

/** What is typed in a row letter by letter, beside the result, which is one key and saved at once. */
export const TYPED_FIELDS = ['number', 'strength', 'food', 'note'] as const;
export type TypedField = (typeof TYPED_FIELDS)[number];
export type MoreField = Exclude<TypedField, 'number'>;

/** Each field of a row is kept by itself, as each is saved by itself. */
export const fieldId = (boxId: string, field: TypedField): string => `${boxId}.${field}`;

/** As the workbook has it. */
export const typedField = (row: LookRow, field: TypedField): string =>
  (field === 'number' ? row.queenNumber : row.typed?.[field])?.toString() ?? '';

export const sameText = (a: string, b: string): boolean => a.trim() === b.trim();

/** All that may be half typed in the rows. */
export const savedFields = (rows: readonly LookRow[]) =>
  rows.flatMap((row) => TYPED_FIELDS.map((field) => ({ id: fieldId(row.id, field), now: typedField(row, field) })));

/** Where typing goes on when the sheet is opened: at what was half typed, else at the first row without a look. */
export function beginning(rows: readonly LookRow[], half: (field: string) => string | null) {
  const isHalf = (row: LookRow) => TYPED_FIELDS.some((field) => half(fieldId(row.id, field)) !== null);
  const at = rows.findIndex(isHalf);
  const row = rows[at];
  const number = row ? half(fieldId(row.id, 'number')) : null;
  return { state: { ...START, current: at < 0 ? firstOpenRow(rows) : at, numbering: number !== null }, number };
}
