import type { Day } from '../../kernel/day.ts';
import { unreachable } from '../../kernel/unreachable.ts';
import type { CalendarFact, Contradiction } from '../../model/timetable.ts';
import { SIGHTING_WORDS } from './sightings.ts';
import { STEP_TITLES } from './step-titles.ts';

/** A fact a forecast rests on, as a clause: "cells sealed, seen Fri 15 May". */
export function factWords(fact: CalendarFact, dayText: (day: Day) => string): string {
  switch (fact.kind) {
    case 'step':
      return `“${STEP_TITLES[fact.step]}” on ${dayText(fact.on)}`;
    case 'larva-age':
      return `larvae of ${fact.hours[0]} to ${fact.hours[1]} hours on ${dayText(fact.on)}`;
    case 'seen':
      return `${SIGHTING_WORDS[fact.what].name}, seen ${dayText(fact.on)}`;
    default:
      return unreachable(fact);
  }
}

/** Two facts that exclude each other, and what is done until the person chooses. */
export function contradictionSentence({ one, other }: Contradiction, dayText: (day: Day) => string): string {
  return `These cannot both be true: ${factWords(one, dayText)}; and ${factWords(other, dayText)}. Until you correct one of them, the dates follow the older brood, so that no queen is out before you look.`;
}
