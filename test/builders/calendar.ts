import { planTimetable } from '../../main/engine/calendar/plan-timetable.ts';
import { type Day, dayOfIso } from '../../shared/kernel/day.ts';
import type { DatedStep, Step } from '../../shared/model/step.ts';
import type { CalendarInput, Seen, Timetable } from '../../shared/model/timetable.ts';

export const day = (iso: string): Day => dayOfIso(iso);

/** Larva grafting on Sunday 10 May 2026, larvae of 12 to 24 hours, nothing seen or done. */
export const aCalendarInput = (changes: Partial<CalendarInput> = {}): CalendarInput => ({
  method: 'larva-grafting',
  comb: null,
  builderType: 'queenless',
  boxType: null,
  anchor: { step: 'give-larvae', on: day('2026-05-10') },
  larvaAgeHours: [12, 24],
  sealedStageCelsius: null,
  seen: [],
  done: [],
  moved: [],
  ...changes,
});

export const aSighting = (changes: Partial<Seen> = {}): Seen => ({
  id: 'seen-1',
  what: 'cells-sealed',
  on: day('2026-05-15'),
  hours: null,
  ...changes,
});

/** The timetable, or a test that fails with the refusal's name. */
export function timetableOf(changes: Partial<CalendarInput> = {}): Timetable {
  const planned = planTimetable(aCalendarInput(changes));
  if (!planned.ok) throw new Error(`refused: ${planned.refusal.kind}`);
  return planned.value;
}

export function stepOf(timetable: Timetable, step: Step): DatedStep {
  const found = timetable.steps.find((one) => one.step === step);
  if (!found) throw new Error(`${step} is not in this timetable`);
  return found;
}
