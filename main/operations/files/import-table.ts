import type { ImportTable, TableImported } from '../../../shared/contract/import.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { rememberColumns } from './remembered-columns.ts';
import { planTable } from './table-plan.ts';

/** Takes the rows of a table in: a safety copy first, then all of them as one change, or none. */
export async function importTable(desk: Desk, choice: ImportTable): Promise<Result<TableImported, Refusal>> {
  const planned = await planTable(desk, choice);
  if (!planned.ok) return planned;
  const { table, columns, missing, dayOrderUnclear, drafts } = planned.value;
  if (missing.length > 0) return refuse({ kind: 'fields-not-matched', field: 'columns', fields: missing });
  if (dayOrderUnclear) return refuse({ kind: 'day-order-needed', field: 'dayOrder' });
  const { ready, problems, problemRows, newYards } = drafts;
  if (problemRows > 0 && !choice.leaveOut)
    return refuse({ kind: 'rows-with-problems', field: 'file', rows: problemRows, first: problems[0]?.row ?? 0 });
  if (ready.length === 0) return refuse({ kind: 'nothing-to-take-in', field: 'file' });
  const kept = desk.workbook.keepCopy('before-import');
  if (!kept.ok) return kept;
  return desk.workbook.change({ did: 'take-in-table', what: choice.kind, rows: ready.length }, (tables) => {
    const yardIds = new Map<string, Id>(tables.yards.all().map(({ name, id }) => [name, id]));
    for (const name of newYards) {
      const id = desk.ids.next();
      tables.yards.insert({ id, name, note: null });
      yardIds.set(name, id);
    }
    for (const draft of ready) draft.write(tables, draft.yard === null ? null : (yardIds.get(draft.yard) ?? null));
    rememberColumns(tables.settings, choice.kind, table.headings, columns);
    return ok({ added: ready.length, leftOut: problemRows, copied: kept.value !== null });
  });
}
