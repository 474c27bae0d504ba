import type { Day } from '../../../shared/kernel/day.ts';
import type { DatedStep, Step } from '../../../shared/model/step.ts';
import type { CalendarInput } from '../../../shared/model/timetable.ts';
import { checkInput } from './check-input.ts';
import { compilePlan } from './compile-plan.ts';
import { findDayZero } from './day-zero.ts';
import type { LaidOut } from './lay-out.ts';
import { isOpen, isOpenJob } from './open-steps.ts';
import { planTimetable } from './plan-timetable.ts';
import { usualLayOut } from './usual-lay-out.ts';

export interface BatchInput {
  readonly id: string;
  readonly input: CalendarInput;
}

/** Which steps a stretch of the flat table stands for. */
interface StepNames {
  readonly rows: readonly { readonly step: Step; readonly isOpenJob: boolean }[];
}

/** The days of all steps of many batches in one flat table. */
export interface ExpandedBatches {
  /** Earliest, expected and latest day of each step, batch after batch. */
  readonly days: Int32Array;
  /** Where each batch begins in `days`; one entry more than batches. */
  readonly starts: Int32Array;
  readonly names: readonly StepNames[];
}

const DAYS_PER_STEP = 3;
const namesOfLayOut = new WeakMap<LaidOut, StepNames>();

/**
 * Dates every step of many batches at once, for what is due and for the season's picture. A batch without sightings and
 * done marks is its method's compiled days shifted to its day 0; the others are planned singly. Days are those of
 * `planTimetable`, which the tests compare. A batch whose facts are refused has no steps here.
 */
export function expandBatches(batches: readonly BatchInput[]): ExpandedBatches {
  const names: StepNames[] = new Array(batches.length);
  const starts = new Int32Array(batches.length + 1);
  const relative: Int32Array[] = new Array(batches.length);
  const dayZeros = new Int32Array(batches.length);
  for (let index = 0, length = 0; index < batches.length; index += 1) {
    const batch = batches[index];
    if (!batch) continue;
    const expanded = expand(batch.input);
    names[index] = expanded.names;
    relative[index] = expanded.days;
    dayZeros[index] = expanded.dayZero;
    length += expanded.days.length;
    starts[index + 1] = length;
  }
  return { days: shiftAll(relative, dayZeros, starts), starts, names };
}

/** Adds each batch's day 0 to its days, into one table. */
function shiftAll(relative: readonly Int32Array[], dayZeros: Int32Array, starts: Int32Array): Int32Array {
  const days = new Int32Array(starts[starts.length - 1] ?? 0);
  let at = 0;
  for (let index = 0; index < relative.length; index += 1) {
    const dayZero = dayZeros[index] ?? 0;
    for (const day of relative[index] ?? []) {
      days[at] = day + dayZero;
      at += 1;
    }
  }
  return days;
}

interface Expanded {
  readonly names: StepNames;
  readonly days: Int32Array;
  readonly dayZero: number;
}

const isPlain = ({ seen, done, moved, dropped, changes, weather }: CalendarInput): boolean =>
  [seen, done, moved, dropped ?? [], changes ?? [], weather ?? []].every((facts) => facts.length === 0);

function expand(input: CalendarInput): Expanded {
  if (checkInput(input) !== null) return NO_STEPS;
  return isPlain(input) ? expandPlain(input) : expandSingly(input);
}

const NO_STEPS: Expanded = { names: { rows: [] }, days: new Int32Array(0), dayZero: 0 };

function expandPlain(input: CalendarInput): Expanded {
  const plan = compilePlan(input);
  const laidOut = usualLayOut(plan, input.larvaAgeHours, input.sealedStageCelsius);
  if (!laidOut.expectedByStep.has(input.anchor.step)) return NO_STEPS;
  return { names: namesOf(laidOut), days: laidOut.flatDays, dayZero: findDayZero(plan, input, laidOut).day };
}

function namesOf(laidOut: LaidOut): StepNames {
  const known = namesOfLayOut.get(laidOut);
  if (known) return known;
  const names = { rows: laidOut.rows.map(({ row }) => ({ step: row.step, isOpenJob: row.kind === 'job' })) };
  namesOfLayOut.set(laidOut, names);
  return names;
}

function expandSingly(input: CalendarInput): Expanded {
  const planned = planTimetable(input);
  if (!planned.ok) return NO_STEPS;
  const { steps } = planned.value;
  return {
    names: { rows: steps.map((step) => ({ step: step.step, isOpenJob: isOpenJob(step) })) },
    days: Int32Array.from(steps.flatMap(({ earliest, expected, latest }) => [earliest, expected, latest])),
    dayZero: 0,
  };
}

export interface DueStep {
  readonly batchId: string;
  readonly step: DatedStep;
}

/**
 * Open steps of all batches whose window meets the days from `from` to `to`, and open jobs whose window ended before
 * (late), in the order of the batches. Timetables are built only for batches that have one.
 */
export function findDueSteps(batches: readonly BatchInput[], from: Day, to: Day): readonly DueStep[] {
  const expanded = expandBatches(batches);
  return batches.flatMap(({ id, input }, index): readonly DueStep[] => {
    if (!anyDue(expanded, index, from, to)) return [];
    const planned = planTimetable(input);
    if (!planned.ok) return [];
    return planned.value.steps
      .filter((step) => isOpen(step) && step.earliest <= to && (step.latest >= from || step.kind === 'job'))
      .map((step) => ({ batchId: id, step }));
  });
}

function anyDue({ days, starts, names }: ExpandedBatches, index: number, from: Day, to: Day): boolean {
  const first = starts[index] ?? 0;
  return (names[index]?.rows ?? []).some(({ isOpenJob }, place) => {
    const at = first + place * DAYS_PER_STEP;
    return (days[at] ?? 0) <= to && (isOpenJob || (days[at + 2] ?? 0) >= from);
  });
}
