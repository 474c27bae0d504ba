import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { type CalendarEvent, calendarFile, escapeText, foldLine } from '../../../main/exchange/calendar-file.ts';
import { dayOfIso } from '../../../shared/kernel/day.ts';

const anEvent = (changes: Partial<CalendarEvent> = {}): CalendarEvent => ({
  uid: 'batch-1.give-larvae@ripecell',
  sequence: 0,
  from: dayOfIso('2026-05-04'),
  to: dayOfIso('2026-05-04'),
  summary: 'Give the larvae, 26-01',
  description: '',
  location: null,
  category: 'Job',
  cancelled: false,
  alarm: 'none',
  ...changes,
});

const fileOf = (...events: readonly CalendarEvent[]): string =>
  calendarFile({ name: 'Season', madeAt: '2026-05-01T17:30:00.000Z', events });

/** Read by ical.js, which shares no code with the writer. */
const eventsIn = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));

const octets = (line: string) => Buffer.byteLength(line);

describe('a line', () => {
  // RFC 5545, 3.1: "Lines of text SHOULD NOT be longer than 75 octets, excluding the line break", a fold is CRLF and one
  // white space; its own example line, unfolded there to "This is a long description that exists on a long line."
  test('is taken apart as the standard’s example is put together', () => {
    const own = 'DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.';
    const whole = own.replaceAll('\r\n ', '');
    expect(whole).toBe('DESCRIPTION:This is a long description that exists on a long line.');
    expect(foldLine(whole)).toBe(whole);
    const long = `${whole} ${whole}`;
    expect(foldLine(long)).toBe(`${long.slice(0, 75)}\r\n ${long.slice(75)}`);
  });

  test('never has a piece above 75 octets, keeps its letters whole, and comes together again', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        const line = `SUMMARY:${text.replaceAll(/[\r\n]/g, '')}`;
        const pieces = foldLine(line).split('\r\n');
        for (const piece of pieces) {
          expect(octets(piece)).toBeLessThanOrEqual(75);
          expect(piece.isWellFormed()).toBe(true);
        }
        expect(pieces.map((piece, index) => (index === 0 ? piece : piece.slice(1))).join('')).toBe(line);
      }),
    );
  });

  test('is as full as it may be: 75 octets, then 74 beside the space', () => {
    expect(
      foldLine('x'.repeat(75 + 74 + 1))
        .split('\r\n')
        .map(octets),
    ).toEqual([75, 75, 2]);
    // 37 letters of two octets fill 74 of 75.
    expect(foldLine('ø'.repeat(40)).split('\r\n').map(octets)).toEqual([74, 7]);
  });
});

describe('a text', () => {
  // RFC 5545, 3.3.11, the standard's own example of a TEXT value.
  test('is escaped as in the standard’s example', () => {
    expect(escapeText('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
      'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    );
  });

  test('has backslash, comma and semicolon escaped, the colon not, and no control sign', () => {
    expect(escapeText('a\\b; c, d: e\r\nf\u0007\tg')).toBe('a\\\\b\\; c\\, d: e\\nf\tg');
  });

  test('comes back from an independent reader as it was', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (typed) => {
        // biome-ignore lint/suspicious/noControlCharactersInRegex: the standard has no way to write them
        const text = typed.replaceAll(/[\u0000-\u0009\u000b-\u001f\u007f]/g, '');
        const [event] = eventsIn(fileOf(anEvent({ summary: text, description: `${text}\nsecond line` })));
        expect(event?.summary).toBe(text);
        expect(event?.description).toBe(`${text}\nsecond line`);
      }),
    );
  });
});

describe('an event', () => {
  // RFC 5545, 3.6.1: "Festival International de Jazz de Montreal", 28 June to 8 July 2007, has DTSTART 20070628 and the
  // exclusive DTEND 20070709; the daily event of one day, 2 November 1997, has DTSTART 19971102.
  test('of several days ends, as in the standard’s example, with the day after its last', () => {
    const festival = { from: dayOfIso('2007-06-28'), to: dayOfIso('2007-07-08'), summary: 'Festival' };
    const text = fileOf(anEvent(festival));
    expect(text).toContain('\r\nDTSTART;VALUE=DATE:20070628\r\nDTEND;VALUE=DATE:20070709\r\n');
    const [event] = eventsIn(text);
    expect(event?.startDate.isDate).toBe(true);
    expect(event?.duration.toSeconds()).toBe(11 * 24 * 3600);
  });

  test('of one day lasts one day, also over the ends of months, years and summer time', () => {
    for (const [day, next] of [
      ['2026-03-29', '2026-03-30'],
      ['2026-10-25', '2026-10-26'],
      ['2024-02-28', '2024-02-29'],
      ['2026-12-31', '2027-01-01'],
    ] as const) {
      const [event] = eventsIn(fileOf(anEvent({ from: dayOfIso(day), to: dayOfIso(day) })));
      expect([event?.startDate.toString(), event?.endDate.toString()]).toEqual([day, next]);
    }
  });

  test('carries what RFC 5545 3.6.1 demands, and leaves the day free', () => {
    const text = fileOf(anEvent({ sequence: 3, location: 'H12, Orchard' }));
    const [event] = eventsIn(text);
    expect(event?.uid).toBe('batch-1.give-larvae@ripecell');
    expect(event?.sequence).toBe(3);
    expect(event?.location).toBe('H12, Orchard');
    expect(text).toContain('\r\nDTSTAMP:20260501T173000Z\r\n');
    expect(text).toContain('\r\nSTATUS:CONFIRMED\r\nTRANSP:TRANSPARENT\r\n');
    expect(text.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:')).toBe(true);
    expect(text.endsWith('END:VEVENT\r\nEND:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('taken back says so and rings no more', () => {
    const text = fileOf(anEvent({ cancelled: true, alarm: 'morning' }));
    expect(eventsIn(text)[0]?.component.getFirstPropertyValue('status')).toBe('CANCELLED');
    expect(text).not.toContain('VALARM');
  });

  test.each([
    ['evening-before', '2026-05-03T18:00:00'],
    ['morning', '2026-05-04T07:00:00'],
  ] as const)('with a reminder %s rings at %s', (alarm, rings) => {
    const [event] = eventsIn(fileOf(anEvent({ alarm })));
    const trigger = event?.component.getFirstSubcomponent('valarm')?.getFirstPropertyValue('trigger');
    const midnight = ICAL.Time.fromDateTimeString('2026-05-04T00:00:00');
    midnight.addDuration(trigger as unknown as ICAL.Duration);
    expect(midnight.toString()).toBe(rings);
  });
});
