import type { ImportTable } from '../../../shared/contract/import.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import type { RowReader } from './row-reader.ts';

/** Signs in a code, a name, a row's name, a note: the limits of the records. */
export const SIGNS = { code: 12, name: 60, row: 30, note: 2000 } as const;

/** What is needed beside the row itself. */
export interface DraftSetting {
  readonly tables: Tables;
  readonly ids: Desk['ids'];
  readonly choice: Pick<ImportTable, 'method' | 'boxType' | 'queenPlace'>;
  /** Codes or numbers seen in earlier rows, and in which row. */
  readonly seen: Map<string, number>;
  /** Last place in walking order that is taken. */
  readonly lastWalkOrder: number;
}

/** A row that can be taken in. `write` is called inside the change, with the id of its yard. */
export interface Draft {
  readonly yard: string | null;
  write(tables: Tables, yardId: Id | null): void;
}

/** Notes a code that an earlier row or the workbook has already. */
export function checkFree(
  row: RowReader,
  field: 'code' | 'number',
  code: string,
  { seen }: DraftSetting,
  isThere: boolean,
): void {
  const earlier = seen.get(code);
  if (earlier !== undefined) row.note(field, 'twice', earlier);
  else if (isThere) row.note(field, 'there-already');
  if (earlier === undefined) seen.set(code, row.number);
}
