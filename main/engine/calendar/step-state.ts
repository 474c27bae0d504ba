import type { Day } from '../../../shared/kernel/day.ts';
import type { DatedStep, Step } from '../../../shared/model/step.ts';

export type StepState = 'done' | 'dropped' | 'late' | 'due' | 'can-be-done' | 'coming' | 'passed';

/** Milestones that make earlier jobs pointless once they are done: nobody counts sealed cells that are in boxes. */
const MILESTONES: readonly Step[] = ['place-cells', 'emergence-check', 'first-look', 'sealed-brood-look'];

/**
 * How a step stands today. A job that the person dropped stays so until
 * it is done or taken up again. Any other job is due from its expected day to the end of its window, may be done from its earliest
 * day, and is late after its latest, unless a later milestone was reached without it. Happenings, warnings and
 * hands-off spans are never late: they pass.
 * @param steps the whole timetable of the step.
 */
export function stepState(step: DatedStep, steps: readonly DatedStep[], today: Day): StepState {
  if (step.doneOn !== null) return 'done';
  if (step.droppedOn !== null) return 'dropped';
  if (today < step.earliest) return 'coming';
  if (isOvertaken(step, steps)) return 'passed';
  if (today > step.latest) return step.kind === 'job' ? 'late' : 'passed';
  if (step.kind !== 'job') return 'due';
  return today < step.expected ? 'can-be-done' : 'due';
}

function isOvertaken(step: DatedStep, steps: readonly DatedStep[]): boolean {
  const own = MILESTONES.indexOf(step.step);
  return steps.some(
    (other) =>
      other.doneOn !== null &&
      MILESTONES.indexOf(other.step) > own &&
      (own >= 0 ||
        step.latest <= other.doneOn ||
        (step.place !== 'boxes' && step.daysAfterLarvae <= other.daysAfterLarvae)),
  );
}

/** After so many days a job that was not marked is taken as done or dropped: nobody opens a hive for it any more. */
const LATE_FOR_DAYS = 10;

/** Whether a late job is still worth naming. */
export const isLateWorthNaming = (step: DatedStep, today: Day): boolean => today - step.latest <= LATE_FOR_DAYS;
