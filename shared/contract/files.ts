import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { CALENDAR_ALARMS } from '../model/calendar-export.ts';
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
  alarm: z.enum(CALENDAR_ALARMS),
});
export type CalendarChoice = z.infer<typeof CalendarChoice>;

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
  readonly batches: readonly { readonly id: string; readonly code: string }[];
}

export interface CalendarMade extends MadeFile {
  /** Events in the file, those taken back among them. */
  readonly events: number;
}

export interface TablesMade extends MadeFile {
  readonly rows: number;
}

export type FilesRefusal = { readonly kind: 'no-calendar-events'; readonly field: 'batchId' };
