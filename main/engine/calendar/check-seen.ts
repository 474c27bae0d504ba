import { SIGHTINGS_OF_BROOD, SIGHTINGS_WITH_HOURS } from '../../../shared/biology/sightings.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';
import type { CalendarInput, CalendarRefusal, Seen } from '../../../shared/model/timetable.ts';
import type { LayingInterval } from './laying-interval.ts';

/** The first sighting that cannot be read: brood seen before any egg was laid, or an age without its hours. */
export function checkSeen(input: CalendarInput, dayZero: Day, laying: LayingInterval): CalendarRefusal | null {
  const laidFrom = addDays(dayZero, Math.floor((laying.oldest + 12) / 24));
  for (const seen of input.seen) {
    const refusal = checkHours(seen) ?? checkDay(seen, laidFrom) ?? checkEggs(seen, input);
    if (refusal) return refusal;
  }
  return null;
}

function checkHours({ id, what, hours }: Seen): CalendarRefusal | null {
  if (!hours) return SIGHTINGS_WITH_HOURS.includes(what) ? { kind: 'seen-needs-hours', field: 'seen', id, what } : null;
  return hours[0] > hours[1] ? { kind: 'seen-hours-turned-round', field: 'seen', id, what } : null;
}

function checkDay({ id, what, on }: Seen, laidFrom: Day): CalendarRefusal | null {
  if (!SIGHTINGS_OF_BROOD.includes(what) || on >= laidFrom) return null;
  return { kind: 'seen-before-laying', field: 'seen', id, what, on, laidFrom };
}

/** Eggs cannot be seen in a comb before it went in, nor in a laying cage before the queen did. */
function checkEggs({ id, what, on }: Seen, { anchor, done }: CalendarInput): CalendarRefusal | null {
  if (what !== 'eggs-first-seen') return null;
  const before = [...done, anchor].find(
    ({ step, on: day }) => (step === 'insert-frame' || step === 'cage-queen') && on < day,
  );
  return before ? { kind: 'seen-before-laying', field: 'seen', id, what, on, laidFrom: before.on } : null;
}
