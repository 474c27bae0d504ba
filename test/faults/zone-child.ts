/**
 * Runs under another time zone (TZ) and prints one line of digests: what the calendar, the day texts and the reading of
 * typed days make of many days, and which civil day the computer's clock gives around each midnight of a year.
 * Arguments: first day, last day, step (day numbers).
 */
import { createHash } from 'node:crypto';
import { computerClock } from '../../app/adapters/clock.ts';
import { type Day, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import { fullDay, shortDay, weekdayLetters, weekNumber } from '../../shared/text/day-text.ts';
import { parseDay } from '../../shared/text/parse-day.ts';
import { timetableOf } from '../builders/calendar.ts';

const [first = 0, last = 0, step = 1] = process.argv.slice(2).map(Number);
const days: Day[] = [];
for (let day = first; day <= last; day += step) days.push(day as Day);

const digest = (lines: Iterable<unknown>): string => {
  const hash = createHash('sha256');
  for (const line of lines) hash.update(`${JSON.stringify(line)}\n`);
  return hash.digest('hex').slice(0, 16);
};

const calendar = digest(days.map((on) => timetableOf({ anchor: { step: 'give-larvae', on } }).steps));
const texts = digest(days.map((day) => [shortDay(day), fullDay(day), weekdayLetters(day), weekNumber(day)]));
const read = digest(days.map((day) => [parseDay(shortDay(day).slice(4), day), parseDay('+16', day), isoOfDay(day)]));

/** The civil day by the wall clock at five hours of each day; that day itself is the only right answer. */
const RealDate = Date;
let wrongClockDays = 0;
let wrongNaiveDays = 0;
for (const day of days) {
  const iso = isoOfDay(day);
  const [year = 0, month = 0, date = 0] = iso.split('-').map(Number);
  for (const hour of [0, 4, 12, 22, 23]) {
    const now = new RealDate(year, month - 1, date, hour, 30);
    globalThis.Date = class extends RealDate {
      constructor(...given: []) {
        super(...(given.length === 0 ? ([now.getTime()] as unknown as []) : given));
      }
    } as DateConstructor;
    if (computerClock.today() !== dayOfIso(iso)) wrongClockDays += 1;
    globalThis.Date = RealDate;
    // The usual mistake, as the control: the UTC date of a local time.
    if (now.toISOString().split('T')[0] !== iso) wrongNaiveDays += 1;
  }
}
process.stdout.write(JSON.stringify({ calendar, texts, read, wrongClockDays, wrongNaiveDays, days: days.length }));
