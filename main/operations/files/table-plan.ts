import type { DayOrder, ImportField, ImportTable } from '../../../shared/contract/import.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { bytesOf } from '../../exchange/file-bytes.ts';
import { type RawTable, readTable } from '../../exchange/read-table.ts';
import type { Desk } from '../operation.ts';
import { columnsByField, guessColumns, guessDayOrder, missingFields } from './match-columns.ts';
import { rememberedColumns } from './remembered-columns.ts';
import { type Drafts, draftRows } from './table-drafts.ts';

/** A table read from a file, its columns matched and its rows tried; nothing is written. */
export interface TablePlan {
  readonly table: RawTable;
  readonly columns: readonly (ImportField | null)[];
  readonly missing: readonly ImportField[];
  readonly dayOrder: DayOrder | null;
  readonly dayOrderUnclear: boolean;
  readonly drafts: Drafts;
}

const NO_DRAFTS: Drafts = { ready: [], problems: [], problemRows: 0, newYards: [] };

export async function planTable(desk: Desk, choice: ImportTable): Promise<Result<TablePlan, Refusal>> {
  const read = await readTable(bytesOf(choice.file.base64), choice.sheet);
  if (!read.ok) return refuse({ kind: 'file-unreadable', field: 'file', trouble: read.refusal });
  const table = read.value;
  const { settings } = desk.workbook.tables;
  const columns =
    choice.columns ??
    rememberedColumns(settings, choice.kind, table.headings) ??
    guessColumns(table.headings, choice.kind);
  const missing = missingFields(columns, choice.kind);
  const guessed = guessDayOrder(table, columns);
  const dayOrder = choice.dayOrder ?? guessed.order;
  const unclear = choice.dayOrder === null && guessed.unclear;
  const reading = { columns: columnsByField(columns), dayOrder: dayOrder ?? 'day-first', today: desk.today };
  const drafts = missing.length > 0 || unclear ? NO_DRAFTS : draftRows(desk, table.rows, choice, reading);
  return ok({ table, columns, missing, dayOrder, dayOrderUnclear: unclear, drafts });
}
