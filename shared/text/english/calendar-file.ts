import type { CalendarChange } from '../../contract/files.ts';
import type { CalendarAlarm } from '../../model/calendar-export.ts';

const events = (n: number) => (n === 1 ? '1 event' : `${n} events`);

/** Words of the calendar file, and of the section that makes it. */
export const calendarWords = {
  name: (workbook: string) => `${workbook}, batches`,
  fileName: (batch: string | null) => (batch === null ? 'ripecell-calendar.ics' : `ripecell-calendar-${batch}.ics`),
  summary: (title: string, batch: string) => `${title}, ${batch}`,
  handsOffSummary: (title: string, batch: string) => `Hands off: ${title}, ${batch}`,
  window: (earliest: string, latest: string) => `Possible from ${earliest} to ${latest}.`,
  categories: { job: 'Job', 'hands-off': 'Hands off', event: 'To expect' },

  title: 'Calendar for the phone',
  explain:
    'A file of all-day events that any calendar can take in. Take in the next one as well: it changes the events you have and makes none twice.',
  which: 'Batches',
  all: 'All that are planned or running',
  reminder: 'Reminder',
  alarms: {
    none: 'none',
    'evening-before': 'the evening before, at 18:00',
    morning: 'on the morning, at 7:00',
  } satisfies Record<CalendarAlarm, string>,
  save: 'Save the calendar file',
  never: (n: number) => `No calendar file was made of these batches yet. The first has ${events(n)}.`,
  list: 'Show them',
  fresh: (day: string) => `The file of ${day} still holds: nothing has changed since.`,
  stale: (day: string, n: number) =>
    `Since the file of ${day}, ${events(n)} ${n === 1 ? 'has' : 'have'} changed. Your phone does not know yet.`,
  columns: { event: 'Event', day: 'Day', change: 'In the phone' },
  changes: {
    new: 'not there yet',
    changed: 'out of date',
    cancelled: 'to be struck out',
    same: 'right',
  } satisfies Record<CalendarChange, string>,
  wasOn: (day: string) => `was ${day}`,
  made: (n: number) => `${events(n)} in the file.`,
  nothing: 'No batch is planned or running, so there is nothing to put in a calendar.',
  saved: (path: string) => `Saved as ${path}. Send it to the phone and open it there.`,
  notSaved: 'The file could not be written there. Choose another folder.',
  downloaded: 'The file is in your downloads. Send it to the phone and open it there.',
} as const;
