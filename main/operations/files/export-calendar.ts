import type { CalendarChoice, CalendarMade } from '../../../shared/contract/files.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { calendarFile } from '../../exchange/calendar-file.ts';
import { base64Of } from '../../exchange/file-bytes.ts';
import type { Desk } from '../operation.ts';
import { workbookWords } from '../workbook-words.ts';
import { type ExportedEvent, nextEvents } from './calendar-events.ts';

/**
 * Makes the calendar file, and keeps what it said so that the next one can change it or take it back. No step of the
 * history: a file that went out cannot be taken back by an undo.
 */
export function exportCalendar(desk: Desk, choice: CalendarChoice): Result<CalendarMade, Refusal> {
  const { workbook, today } = desk;
  const words = workbookWords(desk).calendarFile;
  const events = nextEvents(desk, choice);
  if (events.length === 0) return refuse({ kind: 'no-calendar-events', field: 'batchId' });
  const code = choice.batchId === null ? null : (workbook.tables.batches.get(choice.batchId)?.code ?? null);
  const kept = workbook.change({ did: 'other' }, ({ calendarExports }) => {
    for (const { row } of events) {
      const given = { ...row, exportedOn: isoOfDay(today) };
      if (calendarExports.get(row.id)) calendarExports.update(given);
      else calendarExports.insert(given);
    }
    return ok(null);
  });
  if (!kept.ok) return kept;
  const text = calendarFile({
    name: words.name(workbook.name),
    // The change just saved is the making of the file.
    madeAt: workbook.savedAt ?? `${isoOfDay(today)}T12:00:00Z`,
    events: events.map(asEvent),
  });
  return ok({
    name: words.fileName(code),
    mediaType: 'text/calendar',
    base64: base64Of(text),
    events: events.length,
  });
}

const asEvent = ({ row, description }: ExportedEvent) => ({
  ...row,
  uid: row.id,
  from: dayOfIso(row.fromOn),
  to: dayOfIso(row.toOn),
  description,
});
