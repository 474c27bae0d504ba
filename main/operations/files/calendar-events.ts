import type { CalendarChange, CalendarLine } from '../../../shared/contract/files.ts';
import { type Day, dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { CalendarAlarm, CalendarExport } from '../../../shared/model/calendar-export.ts';
import type { DatedStep } from '../../../shared/model/step.ts';
import { type DateOrder, shortDay } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { stepWords } from '../../../shared/text/sentences.ts';
import { stepState } from '../../engine/calendar/step-state.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { eventDays, eventId } from '../event-days.ts';
import { type RunningBatch, runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { workbookWords } from '../workbook-words.ts';

/** An event of the next file, and how it stands to the last one. */
export interface ExportedEvent {
  /** As it will be kept once the file is made. */
  readonly row: CalendarExport;
  readonly description: string;
  readonly change: CalendarChange;
  /** The first day last given out; null for a new event. */
  readonly before: string | null;
}

export interface CalendarScope {
  /** Null = all batches. */
  readonly batchId: Id | null;
  /** Null = for each event as last given out. */
  readonly alarm: CalendarAlarm | null;
}

/**
 * The events of the next calendar file, by day: those ahead of the batches that are planned or running, and those given
 * out earlier that no longer hold and are taken back. What lies in the past is never added or taken back, and an event
 * taken back is named in every file until its last day, in case one file was not taken in.
 */
export function nextEvents(desk: Desk, { batchId, alarm }: CalendarScope): readonly ExportedEvent[] {
  const {
    workbook: { tables },
    today,
  } = desk;
  const say = { order: storedSettings(tables.settings).dateOrder, words: workbookWords(desk) };
  const sent = new Map(sentBefore(tables, batchId).map((row) => [row.id, row]));
  const usual = lastExport(tables, batchId)?.alarm ?? 'none';
  const withAlarm = ({ row, description }: PlannedEvent): PlannedEvent => ({
    row: { ...row, alarm: alarm ?? sent.get(row.id)?.alarm ?? usual },
    description,
  });
  const running = runningBatches(tables, today).filter(({ batch }) => batchId === null || batch.id === batchId);
  const planned = running
    .flatMap((one) => eventsOf(tables, one, today, say))
    .filter(({ row }) => row.toOn >= isoOfDay(today) || sent.has(row.id))
    .map((event) => comparedWith(sent.get(event.row.id) ?? null, withAlarm(event)));
  const stillPlanned = new Set(planned.map(({ row }) => row.id));
  const takenBack = [...sent.values()]
    .filter((row) => !stillPlanned.has(row.id) && row.toOn >= isoOfDay(today))
    .map((row) => takeBack(row, today));
  return [...planned, ...takenBack].toSorted(byDay);
}

export const sentBefore = (tables: Tables, batchId: Id | null): readonly CalendarExport[] =>
  batchId === null ? tables.calendarExports.all() : tables.calendarExports.where({ batchId });

/** One of the events of the last file of these batches; null when there was none. */
export const lastExport = (tables: Tables, batchId: Id | null): CalendarExport | null =>
  sentBefore(tables, batchId)
    .toSorted((a, b) => (a.exportedOn < b.exportedOn ? -1 : a.exportedOn > b.exportedOn ? 1 : 0))
    .at(-1) ?? null;

/** An event as it is shown beside the file. */
export const calendarLine = (tables: Tables, { row, change, before }: ExportedEvent): CalendarLine => ({
  uid: row.id,
  batch: tables.batches.get(row.batchId)?.code ?? '',
  summary: row.summary,
  from: row.fromOn,
  to: row.toOn,
  change,
  before,
});

interface Say {
  readonly order: DateOrder;
  readonly words: Words;
}

type PlannedEvent = Pick<ExportedEvent, 'row' | 'description'>;

function eventsOf(
  tables: Tables,
  { batch, timetable }: RunningBatch,
  today: Day,
  { order, words }: Say,
): readonly PlannedEvent[] {
  return timetable.steps
    .filter((step) => isWorthAnEvent(step) && !['passed', 'dropped'].includes(stepState(step, timetable.steps, today)))
    .map((step) => {
      const { title, what, caution } = stepWords(words, step.step, batch.method, batch.builderType);
      const { from, to } = eventDays(step);
      const row: CalendarExport = {
        id: eventId(batch.id, step.step),
        batchId: batch.id,
        sequence: 0,
        fromOn: isoOfDay(from),
        toOn: isoOfDay(to),
        summary:
          step.kind === 'hands-off'
            ? words.calendarFile.handsOffSummary(title, batch.code)
            : words.calendarFile.summary(title, batch.code),
        location: locationOf(tables, batch, step),
        category:
          step.kind === 'warning' ? words.calendarFile.categories.event : words.calendarFile.categories[step.kind],
        alarm: 'none',
        cancelled: false,
        exportedOn: isoOfDay(today),
      };
      const window =
        step.kind === 'job'
          ? [
              words.calendarFile.window(
                shortDay(step.earliest, order, words.language),
                shortDay(step.latest, order, words.language),
              ),
            ]
          : [];
      return { row, description: [what, ...window, caution].filter((line) => line !== '').join('\n\n') };
    });
}

/** Jobs and spans to leave alone, and the emergence itself; warnings and lesser happenings would only fill the phone. */
const isWorthAnEvent = ({ kind, step }: DatedStep): boolean =>
  kind === 'job' || kind === 'hands-off' || step === 'emergence';

/** Hive and yard of what is done at a hive; boxes stand in several places. */
function locationOf(tables: Tables, batch: Batch, { place }: DatedStep): string | null {
  const colonyId = place === 'builder' ? batch.builderId : place === 'breeder' ? batch.breederId : null;
  const colony = colonyId === null ? null : tables.colonies.get(colonyId);
  if (!colony) return null;
  const yard = colony.yardId === null ? null : tables.yards.get(colony.yardId);
  return yard ? `${colony.code}, ${yard.name}` : colony.code;
}

function comparedWith(sent: CalendarExport | null, { row, description }: PlannedEvent): ExportedEvent {
  if (!sent) return { row, description, change: 'new', before: null };
  const isSame = SIGNIFICANT.every((field) => row[field] === sent[field]);
  return {
    row: { ...row, sequence: isSame ? sent.sequence : sent.sequence + 1 },
    description,
    change: isSame ? 'same' : 'changed',
    before: sent.fromOn,
  };
}

/** What a person sees in the calendar; a new wording of the description alone does not make an event another one. */
const SIGNIFICANT = ['fromOn', 'toOn', 'summary', 'location', 'alarm', 'cancelled'] as const;

function takeBack(row: CalendarExport, today: Day): ExportedEvent {
  const kept = row.cancelled
    ? row
    : { ...row, cancelled: true, sequence: row.sequence + 1, exportedOn: isoOfDay(today) };
  return { row: kept, description: '', change: row.cancelled ? 'same' : 'cancelled', before: row.fromOn };
}

const byDay = (a: ExportedEvent, b: ExportedEvent): number =>
  dayOfIso(a.row.fromOn) - dayOfIso(b.row.fromOn) || (a.row.id < b.row.id ? -1 : 1);
