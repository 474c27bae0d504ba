import { z } from 'zod';
import { TABLE_KEYS } from '../model/table-key.ts';

/** A value of a sheet. Days travel as ISO text in columns of the kind `day`; null = not known. */
export type Cell = string | number | boolean | null;
export type CellKind = 'text' | 'number' | 'day' | 'yes-no' | 'choice';

export interface SheetColumn {
  readonly heading: string;
  readonly kind: CellKind;
  readonly unit: string;
  readonly meaning: string;
  /** The words a choice may be. */
  readonly choices: readonly string[];
}

export interface Sheet {
  readonly key: string;
  readonly title: string;
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly (readonly Cell[])[];
}

export const ExportTables = z.object({
  /**
   * csv: one table, the dictionary, or all of them in a zip; xlsx: all tables as sheets; json: everything, to be taken
   * in again; schema: what that file may hold (JSON Schema).
   */
  format: z.enum(['csv', 'xlsx', 'json', 'schema']),
  /** For csv only. */
  table: z.enum([...TABLE_KEYS, 'dictionary', 'all']),
  separator: z.enum(['comma', 'semicolon']),
  /** Whether a mark at the beginning says that the file is UTF-8; spreadsheets need it, other programs may stumble. */
  mark: z.boolean(),
});
export type ExportTables = z.infer<typeof ExportTables>;
