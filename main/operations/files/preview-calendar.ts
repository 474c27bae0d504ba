import type { CalendarChoice, CalendarPreview } from '../../../shared/contract/files.ts';
import { runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { nextEvents, sentBefore } from './calendar-events.ts';

/** What the next calendar file would hold, and what of it the phone does not know yet. */
export function previewCalendar(desk: Desk, choice: CalendarChoice): CalendarPreview {
  const {
    workbook: { tables },
    today,
  } = desk;
  const codes = new Map(tables.batches.all().map(({ id, code }) => [id, code]));
  return {
    lines: nextEvents(desk, choice).map(({ row, change, before }) => ({
      uid: row.id,
      batch: codes.get(row.batchId) ?? '',
      summary: row.summary,
      from: row.fromOn,
      to: row.toOn,
      change,
      before,
    })),
    lastExportedOn:
      sentBefore(tables, choice.batchId)
        .map(({ exportedOn }) => exportedOn)
        .toSorted()
        .at(-1) ?? null,
    batches: runningBatches(tables, today).map(({ batch: { id, code } }) => ({ id, code })),
  };
}
