import { z } from 'zod';
import { IdField, IsoDayField } from './fields.ts';

/** When a calendar reminds of an event: not at all, at 18:00 on the evening before, or at 07:00 on the day. */
export const CALENDAR_ALARMS = ['none', 'evening-before', 'morning'] as const;
export type CalendarAlarm = (typeof CALENDAR_ALARMS)[number];

/** One calendar event as it was last given out, so that the next file can change it or take it back. */
export const CalendarExport = z.object({
  /** The event's UID, the same in every file. */
  id: z.string().min(1).max(200),
  batchId: IdField,
  /** How often the event was changed since it was first given out. */
  sequence: z.int().min(0),
  fromOn: IsoDayField,
  toOn: IsoDayField,
  summary: z.string().max(400),
  location: z.string().max(200).nullable(),
  category: z.string().max(60),
  alarm: z.enum(CALENDAR_ALARMS),
  cancelled: z.boolean(),
  exportedOn: IsoDayField,
});
export type CalendarExport = z.infer<typeof CalendarExport>;
