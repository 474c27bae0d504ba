import { expect, test } from 'vitest';
import { instantText } from '../../../shared/text/instant-text.ts';

/** The same instant as this computer's own clock shows it, by the language's own formatter. */
const clock = (instant: string) =>
  new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(new Date(instant));

test.each(['2026-05-14T18:05:09.000Z', '2026-01-31T23:59:59.000Z', '2026-03-29T01:30:00.000Z'])(
  '%s is told by the calendar and clock of this computer',
  (instant) => {
    const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric' }).format(new Date(instant));
    const text = instantText(instant);
    expect(text).toMatch(new RegExp(`^[A-Z][a-z]{2} ${day} [A-Z][a-z]{2} 2026, ${clock(instant)}$`));
  },
);

test('follows the order of days the person wants', () => {
  const noon = '2026-05-14T12:00:00.000Z';
  expect(instantText(noon, 'month-first')).toMatch(/^[A-Z][a-z]{2} May 1\d, 2026, /);
  expect(instantText(noon, 'year-first')).toMatch(/^[A-Z][a-z]{2} 2026-05-1\d, /);
});

test('in German a month cut short has no point', () => {
  expect(instantText('2026-04-27T12:00:00.000Z', 'day-first', 'de')).toMatch(/^[A-Z][a-z] 2\d\. Apr 2026, /);
});
