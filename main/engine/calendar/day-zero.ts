import { SIGHTING_HOURS } from '../../../shared/biology/sightings.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';
import { STEPS, type Step } from '../../../shared/model/step.ts';
import type { CalendarFact, CalendarInput, Seen } from '../../../shared/model/timetable.ts';
import type { Plan } from './compile-plan.ts';
import type { LaidOut } from './lay-out.ts';

export interface DayZero {
  readonly day: Day;
  readonly reckonedFrom: CalendarFact;
}

/** Days from the first sight of eggs to larvae of the right age. */
const EGG_SEEN_TO_LARVA = SIGHTING_HOURS.eggSeenToLarva.value / 24;
const UNDRAWN_TO_LARVA = EGG_SEEN_TO_LARVA + SIGHTING_HOURS.undrawnToLaid.value / 24;

/**
 * The day larvae are given, from the most binding fact: larvae really given, else the first transfer or the caging of
 * the queen, else the comb put in. A step done beats one the person has moved, and that beats the anchor. While it hangs
 * on an earlier step, eggs first seen or a comb not laid yet move it.
 */
export function findDayZero(plan: Plan, input: CalendarInput, usual: LaidOut): DayZero {
  const fact = bindingFact(plan, input);
  const day = addDays(fact.on, -expectedDayOf(usual, fact.step));
  if (plan.table.start !== 'given' || isAtOrAfterGiving(fact.step))
    return { day, reckonedFrom: { kind: 'step', ...fact } };
  return moveWithComb({ day, reckonedFrom: { kind: 'step', ...fact } }, input.seen);
}

function bindingFact(plan: Plan, { anchor, done, moved }: CalendarInput): { readonly step: Step; readonly on: Day } {
  for (const step of plan.table.fixedBy) {
    const doneOn = done.find((one) => one.step === step)?.on;
    if (doneOn !== undefined) return { step, on: doneOn };
    const movedTo = moved.find((one) => one.step === step)?.to;
    if (movedTo !== undefined) return { step, on: movedTo };
    if (anchor.step === step || isAtOrAfterGiving(anchor.step)) return anchor;
  }
  return anchor;
}

const isAtOrAfterGiving = (step: Step): boolean => STEPS.indexOf(step) >= STEPS.indexOf('give-larvae');

function moveWithComb(planned: DayZero, seen: readonly Seen[]): DayZero {
  const eggs = pick(seen, ['eggs-first-seen'], (a, b) => a.on < b.on);
  const unlaid = pick(seen, ['frame-not-drawn', 'comb-filled-with-nectar'], (a, b) => a.on > b.on);
  const fromEggs = eggs ? { day: addDays(eggs.on, EGG_SEEN_TO_LARVA), reckonedFrom: asFact(eggs) } : planned;
  if (!unlaid) return fromEggs;
  const notBefore = addDays(unlaid.on, UNDRAWN_TO_LARVA);
  return notBefore > fromEggs.day ? { day: notBefore, reckonedFrom: asFact(unlaid) } : fromEggs;
}

/** The sighting that wins among those of the given kinds; equal days are settled by id, so that order does not matter. */
function pick(seen: readonly Seen[], kinds: readonly string[], beats: (a: Seen, b: Seen) => boolean): Seen | undefined {
  return seen
    .filter((one) => kinds.includes(one.what))
    .reduce<Seen | undefined>(
      (best, one) => (!best || beats(one, best) || (one.on === best.on && one.id < best.id) ? one : best),
      undefined,
    );
}

const asFact = ({ id, what, on }: Seen): CalendarFact => ({ kind: 'seen', id, what, on });

function expectedDayOf({ expectedByStep }: LaidOut, step: Step): number {
  const expected = expectedByStep.get(step);
  if (expected === undefined) throw new Error(`${step} is not in this plan`);
  return expected;
}
