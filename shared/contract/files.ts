import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { CALENDAR_ALARMS, type CalendarAlarm } from '../model/calendar-export.ts';
import { IdField } from '../model/fields.ts';

/** A file made for the person to keep: the window saves it, the browser downloads it. */
export interface MadeFile {
  readonly name: string;
  readonly mediaType: string;
  readonly base64: string;
}

export const CalendarChoice = z.object({
  /** Null = all batches that are planned or running. */
  batchId: IdField.nullable(),
  /** Null = for each event as last given out; none where there was no file yet. */
  alarm: z.enum(CALENDAR_ALARMS).nullable(),
});
export type CalendarChoice = z.infer<typeof CalendarChoice>;

/** The calendar of one batch, or of all where it is null. */
export const CalendarOf = CalendarChoice.pick({ batchId: true });
export type CalendarOf = z.infer<typeof CalendarOf>;

/** What an event is to a calendar that took in the last file. */
export type CalendarChange = 'new' | 'changed' | 'cancelled' | 'same';

export interface CalendarLine {
  readonly uid: string;
  readonly batch: string;
  readonly summary: string;
  readonly from: IsoDay;
  readonly to: IsoDay;
  readonly change: CalendarChange;
  /** The first day last given out; null for a new event. */
  readonly before: IsoDay | null;
}

export interface CalendarPreview {
  readonly lines: readonly CalendarLine[];
  /** Day of the last file of these batches; null when there was none. */
  readonly lastExportedOn: IsoDay | null;
  /** Of the last file of these batches; none when there was none. */
  readonly lastAlarm: CalendarAlarm;
  readonly batches: readonly { readonly id: string; readonly code: string }[];
}

/** What a calendar that took in the last file has wrong, or has not at all. */
export interface StaleCalendar {
  /** Day of that file. */
  readonly since: IsoDay;
  readonly lines: readonly CalendarLine[];
}

export interface CalendarMade extends MadeFile {
  /** Events in the file, those taken back among them. */
  readonly events: number;
}

export interface TablesMade extends MadeFile {
  readonly rows: number;
}

export type FilesRefusal = { readonly kind: 'no-calendar-events'; readonly field: 'batchId' };
