import type { Day } from '../../kernel/day.ts';
import { unreachable } from '../../kernel/unreachable.ts';
import type { Step } from '../../model/step.ts';
import type { CalendarRefusal } from '../../model/timetable.ts';
import { celsiusText } from '../degrees.ts';
import { SIGHTING_WORDS } from './sightings.ts';
import { STEP_TITLES } from './step-titles.ts';

const title = (step: Step): string => `“${STEP_TITLES[step]}”`;

/**
 * One sentence for why no timetable can be reckoned: the field first, then what is wrong, then the remedy. A new kind
 * without a sentence does not compile.
 * @param dayText how the person wants days written.
 * @param degrees how the person wants temperatures written.
 */
export function calendarRefusalSentence(
  refusal: CalendarRefusal,
  dayText: (day: Day) => string,
  degrees: (celsius: number) => string = celsiusText,
): string {
  switch (refusal.kind) {
    case 'method-unknown':
      return `Method: this program does not know “${refusal.method}”; the file may be from a newer version. Choose one of the methods in the list.`;
    case 'step-not-in-method':
      return `First day: ${title(refusal.step)} is not part of this method. Choose a step of its timetable, such as the day the larvae are given.`;
    case 'larva-age-turned-round':
      return `Age of the larvae: the youngest (${refusal.from} hours) is older than the oldest (${refusal.to} hours). Type the smaller number first.`;
    case 'larva-age-impossible':
      return `Age of the larvae: no queen comes from a larva of ${refusal.hours} hours. Type hours since hatching, 0 to ${refusal.most}.`;
    case 'temperature-impossible':
      return `Warmth of the sealed cells: ${degrees(refusal.celsius)} is outside what can be reckoned. Type ${degrees(refusal.least)} to ${degrees(refusal.most)}, or leave it empty for cells in a hive.`;
    case 'seen-before-laying':
      return `Day seen: ${SIGHTING_WORDS[refusal.what].name} on ${dayText(refusal.on)} cannot be, since the eggs were laid on ${dayText(refusal.laidFrom)} at the earliest. Correct this day, or the first day of the batch.`;
    case 'seen-needs-hours':
      return `Hours: for “${SIGHTING_WORDS[refusal.what].ask}” the age is needed. Choose a size, or type the hours since hatching.`;
    case 'seen-hours-turned-round':
      return `Hours: for “${SIGHTING_WORDS[refusal.what].ask}” the smaller number comes first. Change the two numbers over.`;
    case 'done-out-of-order':
      return `Day done: ${title(refusal.step)} on ${dayText(refusal.on)} lies before ${title(refusal.after)} on ${dayText(refusal.afterOn)}. Correct one of the two days.`;
    case 'moved-out-of-order':
      return `New day: ${title(refusal.step)} cannot be put on ${dayText(refusal.on)}, since ${title(refusal.after)} was done on ${dayText(refusal.afterOn)}. Choose that day or a later one.`;
    case 'window-turned-round':
      return `Your method: the days of ${title(refusal.step)} are turned round (earliest ${refusal.earliestDay}, expected ${refusal.expectedDay}, latest ${refusal.latestDay}). Put them in rising order.`;
    default:
      return unreachable(refusal);
  }
}
