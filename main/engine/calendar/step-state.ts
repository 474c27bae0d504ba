import type { Day } from '../../../shared/kernel/day.ts';
import type { DatedStep } from '../../../shared/model/step.ts';

export type StepState = 'done' | 'late' | 'due' | 'can-be-done' | 'coming' | 'passed';

/**
 * How a step stands today. A job is due from its expected day to the end of its window, may be done from its earliest
 * day, and is late after its latest. Happenings, warnings and hands-off spans are never late: they pass.
 */
export function stepState(step: DatedStep, today: Day): StepState {
  if (step.doneOn !== null) return 'done';
  if (today < step.earliest) return 'coming';
  if (today > step.latest) return step.kind === 'job' ? 'late' : 'passed';
  if (step.kind !== 'job') return 'due';
  return today < step.expected ? 'can-be-done' : 'due';
}

/** After so many days a job that was not marked is taken as done or dropped: nobody opens a hive for it any more. */
const LATE_FOR_DAYS = 10;

/** Whether a late job is still worth naming. */
export const isLateWorthNaming = (step: DatedStep, today: Day): boolean => today - step.latest <= LATE_FOR_DAYS;
