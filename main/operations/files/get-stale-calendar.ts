import type { CalendarOf, StaleCalendar } from '../../../shared/contract/files.ts';
import type { Desk } from '../operation.ts';
import { calendarLine, lastExport, nextEvents } from './calendar-events.ts';

/**
 * What a calendar that took in the last file has wrong by now; null when nothing is, or no file was ever made. Batches of
 * which no file was made are left out: whoever keeps them off the phone does so on purpose.
 */
export function getStaleCalendar(desk: Desk, { batchId }: CalendarOf): StaleCalendar | null {
  const { tables } = desk.workbook;
  const last = lastExport(tables, batchId);
  if (last === null) return null;
  const sent = new Set(tables.calendarExports.all().map((row) => row.batchId));
  const stale = nextEvents(desk, { batchId, alarm: null }).filter(
    ({ row, change }) => change !== 'same' && sent.has(row.batchId),
  );
  if (stale.length === 0) return null;
  return { since: last.exportedOn, lines: stale.map((event) => calendarLine(tables, event)) };
}
