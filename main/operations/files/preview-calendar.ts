import type { CalendarChoice, CalendarPreview } from '../../../shared/contract/files.ts';
import { runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { calendarLine, lastExport, nextEvents } from './calendar-events.ts';

/** What the next calendar file would hold, and what of it the phone does not know yet. */
export function previewCalendar(desk: Desk, choice: CalendarChoice): CalendarPreview {
  const {
    workbook: { tables },
    today,
  } = desk;
  const last = lastExport(tables, choice.batchId);
  return {
    lines: nextEvents(desk, choice).map((event) => calendarLine(tables, event)),
    lastExportedOn: last?.exportedOn ?? null,
    lastAlarm: last?.alarm ?? 'none',
    batches: runningBatches(tables, today).map(({ batch: { id, code } }) => ({ id, code })),
  };
}
