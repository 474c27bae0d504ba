import { addDays, type Day, isoOfDay } from '../../shared/kernel/day.ts';
import type { CalendarAlarm } from '../../shared/model/calendar-export.ts';

/** One all-day event. Both days belong to it. */
export interface CalendarEvent {
  /** The event's name for life: a calendar that has it already changes its own entry instead of making a second one. */
  readonly uid: string;
  /** Raised with every change; a calendar keeps the higher one. */
  readonly sequence: number;
  readonly from: Day;
  readonly to: Day;
  readonly summary: string;
  readonly description: string;
  readonly location: string | null;
  readonly category: string;
  /** Taken back: the calendar strikes it out. */
  readonly cancelled: boolean;
  readonly alarm: CalendarAlarm;
}

export interface CalendarFile {
  readonly name: string;
  /** The instant it was made, ISO 8601 UTC. */
  readonly madeAt: string;
  readonly events: readonly CalendarEvent[];
}

const PRODUCT = '-//Ripecell//Apiary workbook//EN';
/** Octets of a line without its ending, RFC 5545, 3.1. */
const LONGEST_LINE = 75;

/** From midnight at the start of the day: the evening before at 18:00, or the same morning at 07:00. */
const TRIGGERS: Readonly<Record<Exclude<CalendarAlarm, 'none'>, string>> = {
  'evening-before': '-PT6H',
  morning: 'PT7H',
};

/** The text of an iCalendar file (RFC 5545): all-day events, their last day exclusive as the standard has it. */
export function calendarFile({ name, madeAt, events }: CalendarFile): string {
  const stamp = `DTSTAMP:${utcStamp(madeAt)}`;
  const lines = ['BEGIN:VCALENDAR', 'VERSION:2.0', `PRODID:${PRODUCT}`, 'CALSCALE:GREGORIAN', textLine('NAME', name)];
  for (const event of events) addEvent(lines, event, stamp);
  lines.push('END:VCALENDAR', '');
  return lines.join('\r\n');
}

function addEvent(lines: string[], event: CalendarEvent, stamp: string): void {
  const { uid, sequence, from, to, location, cancelled, alarm } = event;
  lines.push(
    'BEGIN:VEVENT',
    textLine('UID', uid),
    stamp,
    `SEQUENCE:${sequence}`,
    `DTSTART;VALUE=DATE:${basicDay(from)}`,
    `DTEND;VALUE=DATE:${basicDay(addDays(to, 1))}`,
    textLine('SUMMARY', event.summary),
  );
  if (event.description !== '') lines.push(textLine('DESCRIPTION', event.description));
  if (location !== null) lines.push(textLine('LOCATION', location));
  lines.push(textLine('CATEGORIES', event.category), `STATUS:${cancelled ? 'CANCELLED' : 'CONFIRMED'}`);
  // The day stays free for other things.
  lines.push('TRANSP:TRANSPARENT');
  if (alarm !== 'none' && !cancelled)
    lines.push(
      'BEGIN:VALARM',
      'ACTION:DISPLAY',
      textLine('DESCRIPTION', event.summary),
      `TRIGGER:${TRIGGERS[alarm]}`,
      'END:VALARM',
    );
  lines.push('END:VEVENT');
}

const textLine = (property: string, text: string): string => foldLine(`${property}:${escapeText(text)}`);

/** 20260514 */
const basicDay = (day: Day): string => isoOfDay(day).replaceAll('-', '');

/** 2026-05-14T18:00:00.000Z as 20260514T180000Z */
const utcStamp = (instant: string): string => `${instant.slice(0, 19).replaceAll(/[-:]/g, '')}Z`;

// biome-ignore lint/suspicious/noControlCharactersInRegex: control signs are what a TEXT value must not hold (RFC 5545, 3.1)
const CONTROL_SIGNS = /[\u0000-\u0008\u000b-\u001f\u007f]/g;

/** A TEXT value, RFC 5545, 3.3.11: backslash, semicolon and comma are escaped, a line end is written as \n. */
export function escapeText(text: string): string {
  return text
    .toWellFormed()
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(CONTROL_SIGNS, '')
    .replaceAll(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: one octet each in UTF-8
const ONE_OCTET_EACH = /^[\u0000-\u007f]*$/;

/** A line cut into pieces of at most 75 octets; each next piece begins with a space. No letter is cut in two. */
export function foldLine(line: string): string {
  if (line.length <= LONGEST_LINE && ONE_OCTET_EACH.test(line)) return line;
  let folded = '';
  let octets = 0;
  for (const letter of line) {
    const own = octetsOf(letter);
    if (octets + own > LONGEST_LINE) {
      folded += '\r\n ';
      octets = 1;
    }
    folded += letter;
    octets += own;
  }
  return folded;
}

function octetsOf(letter: string): number {
  const point = letter.codePointAt(0) ?? 0;
  if (point < 0x80) return 1;
  if (point < 0x800) return 2;
  return point < 0x10000 ? 3 : 4;
}
