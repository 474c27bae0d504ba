import { MOST_LARVA_HOURS, SEALED_CELSIUS_LIMITS } from '../../../shared/biology/development.ts';
import { STEPS_IN_ORDER } from '../../../shared/biology/step-order.ts';
import type { Day } from '../../../shared/kernel/day.ts';
import { METHODS } from '../../../shared/model/method.ts';
import type { Step } from '../../../shared/model/step.ts';
import type { CalendarInput, CalendarRefusal, HourRange, StepDay } from '../../../shared/model/timetable.ts';

/** The first thing in the input that no timetable can be reckoned from; null when there is none. */
export function checkInput(input: CalendarInput): CalendarRefusal | null {
  return (
    checkMethod(input) ??
    checkLarvaAge(input.larvaAgeHours) ??
    checkWarmth(input.sealedStageCelsius) ??
    checkChanges(input) ??
    checkOrder(input)
  );
}

function checkMethod({ method }: CalendarInput): CalendarRefusal | null {
  // A file made elsewhere may name a method this program does not know, whatever the type says.
  return METHODS.includes(method) ? null : { kind: 'method-unknown', field: 'method', method };
}

function checkLarvaAge(hours: HourRange | null): CalendarRefusal | null {
  if (!hours) return null;
  const [from, to] = hours;
  if (from > to) return { kind: 'larva-age-turned-round', field: 'larvaAgeHours', from, to };
  if (to > MOST_LARVA_HOURS || from < 0) {
    return {
      kind: 'larva-age-impossible',
      field: 'larvaAgeHours',
      hours: from < 0 ? from : to,
      most: MOST_LARVA_HOURS,
    };
  }
  return null;
}

function checkWarmth(celsius: number | null): CalendarRefusal | null {
  const { least, most } = SEALED_CELSIUS_LIMITS;
  if (celsius === null || (celsius >= least && celsius <= most)) return null;
  return { kind: 'temperature-impossible', field: 'sealedStageCelsius', celsius, least, most };
}

function checkChanges({ changes }: CalendarInput): CalendarRefusal | null {
  const wrong = changes?.find(
    ({ earliestDay, expectedDay, latestDay }) => !(earliestDay <= expectedDay && expectedDay <= latestDay),
  );
  if (!wrong) return null;
  const { step, earliestDay, expectedDay, latestDay } = wrong;
  return { kind: 'window-turned-round', field: 'changes', step, earliestDay, expectedDay, latestDay };
}

/** Steps done, and the anchor, must lie in the order in which they can happen; so must a step put on another day. */
function checkOrder({ anchor, done, moved }: CalendarInput): CalendarRefusal | null {
  if (done.length === 0 && moved.length === 0) return null;
  const facts: readonly StepDay[] = done.some((one) => one.step === anchor.step) ? done : [...done, anchor];
  const dayOf = (step: Step): Day | undefined => facts.find((one) => one.step === step)?.on;
  for (const [after, step] of STEPS_IN_ORDER) {
    const afterOn = dayOf(after);
    if (afterOn === undefined) continue;
    const on = dayOf(step);
    if (on !== undefined && on < afterOn) return { kind: 'done-out-of-order', field: 'done', step, on, after, afterOn };
    const to = moved.find((one) => one.step === step)?.to;
    const isDone = done.some((one) => one.step === step);
    const afterIsDone = done.some((one) => one.step === after);
    if (to !== undefined && !isDone && afterIsDone && to < afterOn) {
      return { kind: 'moved-out-of-order', field: 'moved', step, on: to, after, afterOn };
    }
  }
  return null;
}
