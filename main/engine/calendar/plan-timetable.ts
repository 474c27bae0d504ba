import { addDays, type Day } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { DatedStep, HandsOffSpan, Step } from '../../../shared/model/step.ts';
import type { CalendarInput, CalendarRefusal, Timetable } from '../../../shared/model/timetable.ts';
import { checkInput } from './check-input.ts';
import { checkSeen } from './check-seen.ts';
import { compilePlan, type Plan, withChanges } from './compile-plan.ts';
import { dateSteps } from './date-steps.ts';
import { type DayZero, findDayZero } from './day-zero.ts';
import { type EmergenceDays, emergenceDays } from './emergence-hours.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import { ANY_BROOD, type LayingInterval, usualLaying } from './laying-interval.ts';
import { type LayingBase, type NarrowedLaying, narrowLaying } from './narrow-laying.ts';
import { usualLayOut } from './usual-lay-out.ts';
import { waitForWeather } from './wait-for-weather.ts';

/**
 * The whole timetable of one batch: every step with earliest, expected and latest civil day, what must be left alone,
 * the window of emergence and the last safe day for moving cells. Derived from facts only, so it can be reckoned anew
 * whenever one is added; steps done keep their day. Refused when the facts cannot be read at all; facts that exclude
 * each other are kept and named in `contradictions`.
 */
export function planTimetable(input: CalendarInput): Result<Timetable, CalendarRefusal> {
  const refusal = checkInput(input);
  if (refusal) return refuse(refusal);
  const plan = withChanges(compilePlan(input), input.changes ?? []);
  const usual = usualLaying(plan.table, input.larvaAgeHours);
  const usualDays = usualLayOut(plan, input.larvaAgeHours, input.sealedStageCelsius);
  if (!usualDays.expectedByStep.has(input.anchor.step)) return refuse(anchorUnknown(input, plan));
  const zero = findDayZero(plan, input, usualDays);
  const early = checkSeen(input, zero.day, usual);
  if (early) return refuse(early);
  const narrowed = narrowLaying(usual, layingBase(input, plan, usual, zero), input.seen, zero.day);
  return ok(assemble(input, plan, usualDays, zero, narrowed));
}

function assemble(
  input: CalendarInput,
  plan: Plan,
  usualDays: LaidOut,
  zero: DayZero,
  narrowed: NarrowedLaying,
): Timetable {
  const known = { placed: knownDay(input, 'place-cells', zero.day), emerged: knownDay(input, 'emergence', zero.day) };
  const plain = input.seen.length === 0 && known.placed === null && known.emerged === null;
  const laidOut = plain ? usualDays : layOut(plan, emergenceSeen(input, narrowed), known);
  const steps = waitForWeather(dateSteps(laidOut, input, zero.day), input.weather ?? []);
  const emergence = steps.find((one) => one.step === 'emergence');
  if (!emergence) throw new Error(`${input.method} has no emergence`);
  return {
    method: input.method,
    larvaeGivenOn: zero.day,
    steps,
    handsOff: handsOffSpans(steps),
    emergence: { earliest: emergence.earliest, expected: emergence.expected, latest: emergence.latest },
    placeDeadline: addDays(zero.day, laidOut.emergence.placeDeadline),
    reckonedFrom: narrowed.decidedBy ?? zero.reckonedFrom,
    contradictions: narrowed.contradictions,
  };
}

/**
 * A queen seen out caps the expected day. Where only one reading is left the window is the narrowest there is: a guess
 * must not look like knowledge of a wide span.
 */
function emergenceSeen(input: CalendarInput, { laying, isSingleReading, emergedBy }: NarrowedLaying): EmergenceDays {
  const days = emergenceDays(laying, input.sealedStageCelsius);
  if (isSingleReading) return { ...days, expected: days.earliest + 1, latest: days.earliest + 1 };
  if (emergedBy === null) return days;
  const seenOut = Math.floor((emergedBy + 12) / 24);
  return { ...days, expected: Math.max(days.earliest, Math.min(days.expected, seenOut)) };
}

/** Days from day 0 on which a step was done, or was put by the person. */
function knownDay({ done, moved }: CalendarInput, step: Step, dayZero: Day): number | null {
  const on = done.find((one) => one.step === step)?.on ?? moved.find((one) => one.step === step)?.to;
  return on === undefined ? null : on - dayZero;
}

function layingBase(input: CalendarInput, plan: Plan, usual: LayingInterval, zero: DayZero): LayingBase {
  const hours = input.larvaAgeHours;
  if (hours) return { fact: { kind: 'larva-age', hours, on: zero.day }, allows: usual };
  return { fact: zero.reckonedFrom, allows: plan.table.start === 'given' ? ANY_BROOD : usual };
}

function handsOffSpans(steps: readonly DatedStep[]): readonly HandsOffSpan[] {
  return steps.flatMap(({ step, place, earliest, latest }) =>
    step === 'hands-off-cells' || step === 'hands-off-mating' ? [{ step, place, from: earliest, to: latest }] : [],
  );
}

function anchorUnknown(input: CalendarInput, plan: Plan): CalendarRefusal {
  return {
    kind: 'step-not-in-method',
    field: 'anchor',
    step: input.anchor.step,
    known: plan.rows.map((row) => row.step),
  };
}
