import type { Job, LeaveAlone, TodayView, WorkDay } from '../../../shared/contract/today.ts';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';
import { addDays, type Day, isoOfDay, laterOf } from '../../../shared/kernel/day.ts';
import { ownWords } from '../../../shared/model/method-copy.ts';
import type { DatedStep } from '../../../shared/model/step.ts';
import { canBeDropped, isOpenJob } from '../../engine/calendar/open-steps.ts';
import { isLateWorthNaming, stepState } from '../../engine/calendar/step-state.ts';
import { sumMaterials, sumWork } from '../../engine/calendar/sum-work.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { copyOf } from '../batch-calendar.ts';
import { handsOffOn, type RunningBatch, runningBatches } from '../hands-off.ts';
import { placeOf } from '../job-places.ts';
import { LOOK_STEPS } from '../look-answers.ts';
import type { Desk } from '../operation.ts';
import { quietHives } from '../quiet-hives.ts';
import { freeDaysNear, hiveOfJob } from '../shut-hives.ts';

/** What to do today, what is late or may be done early, what must be left alone, and what comes tomorrow. */
export function getToday({ workbook: { tables }, today }: Desk): TodayView {
  const running = runningBatches(tables, today);
  const jobs = running.flatMap((one) => jobsOf(tables, running, one, today));
  const tomorrow = addDays(today, 1);
  const due = jobs.filter(({ state }) => state === 'due');
  return {
    today: isoOfDay(today),
    due: inWalkingOrder(due),
    late: inWalkingOrder(jobs.filter(({ state }) => state === 'late')),
    early: inWalkingOrder(jobs.filter(({ state }) => state === 'can-be-done')),
    tomorrow: inWalkingOrder(jobs.filter(({ job }) => job.expected === isoOfDay(tomorrow))),
    leaveAlone: leaveAlone(tables, running, today),
    quietHives: quietHives(tables, today),
    bring: sumMaterials(due.map(({ job }) => job)),
    minutesToday: due.reduce((sum, { job }) => sum + (job.minutes ?? 0), 0),
    week: weekOf(jobs, today),
    anyBatch: tables.batches.all().length > 0,
  };
}

interface StatedJob {
  readonly job: Job;
  readonly step: DatedStep;
  readonly state: ReturnType<typeof stepState>;
}

const WEEK_DAYS = 7;

/**
 * Work by day, today first; a job that has been due since an earlier day is today's work. A late one is named apart,
 * and one that a later step has overtaken is no work any more.
 */
function weekOf(jobs: readonly StatedJob[], today: Day): readonly WorkDay[] {
  const open = jobs
    .filter(({ state }) => state === 'due' || state === 'can-be-done' || state === 'coming')
    .map(({ job, step }) => ({ job, step: { ...step, expected: laterOf(step.expected, today) } }));
  const steps = open.map(({ step }) => step);
  return sumWork(steps, today, addDays(today, WEEK_DAYS - 1)).map(({ on, minutes, materials }) => ({
    on: isoOfDay(on),
    minutes,
    materials,
    jobs: open
      .filter(({ step }) => step.expected === on)
      .map(({ job: { batchId, batch, step } }) => ({ batchId, batch, step })),
  }));
}

function jobsOf(
  tables: Tables,
  running: readonly RunningBatch[],
  { batch, timetable }: RunningBatch,
  today: Day,
): readonly StatedJob[] {
  const open = timetable.steps.filter(isOpenJob);
  return open.flatMap((step) => {
    const state = stepState(step, timetable.steps, today);
    if (state === 'late' && !isLateWorthNaming(step, today)) return [];
    const place = placeOf(tables, batch, step);
    if (place === null) return [];
    const ownTitle = ownWords(copyOf(tables, batch), step.step).title;
    const colonyId = hiveOfJob(batch, step);
    const clash = clashOf(running, state === 'late' ? null : batch.id, colonyId, step, today);
    return [{ state, step, job: { ...jobOf(step), ...place, batchId: batch.id, batch: batch.code, ownTitle, clash } }];
  });
}

function jobOf(step: DatedStep): Omit<Job, 'batchId' | 'batch' | 'ownTitle' | 'where' | 'yard' | 'clash'> {
  return {
    step: step.step,
    earliest: isoOfDay(step.earliest),
    expected: isoOfDay(step.expected),
    latest: isoOfDay(step.latest),
    daysAfterLarvae: step.daysAfterLarvae,
    timeOfDay: step.timeOfDay,
    hardness: step.hardness,
    minutes: step.minutes,
    materials: step.materials,
    canBeDropped: canBeDropped(step),
    opens: opensWith(step),
  };
}

function opensWith({ step }: DatedStep): Job['opens'] {
  if (step === 'give-larvae' || step === 'count-taken' || step === 'count-sealed') return 'counts';
  if (step === 'place-cells') return 'place-cells';
  return LOOK_STEPS.includes(step) ? 'looks' : 'mark';
}

/**
 * The job's hive is hands off because of another batch, or, for a late job, because of its own: the nearest free day
 * before and after.
 */
function clashOf(
  running: readonly RunningBatch[],
  batchId: string | null,
  colonyId: string | null,
  step: DatedStep,
  today: Day,
): Job['clash'] {
  if (colonyId === null) return null;
  const day = step.expected > today ? step.expected : today;
  const other = handsOffOn(running, day).find((one) => one.colonyId === colonyId && one.batch.id !== batchId);
  if (!other) return null;
  return { batch: other.batch.code, alternatives: freeDaysNear(running, colonyId, batchId, day).map(isoOfDay) };
}

const inWalkingOrder = (jobs: readonly StatedJob[]): readonly Job[] =>
  jobs
    .map(({ job }) => job)
    .toSorted(
      (a, b) =>
        (a.yard ?? '').localeCompare(b.yard ?? '') || whereText(a).localeCompare(whereText(b), 'en', { numeric: true }),
    );

const whereText = ({ where }: Job): string =>
  where.kind === 'hive' ? where.code : where.kind === 'boxes' ? (where.codes[0] ?? '') : '';

/** Mating boxes must not be opened in the hours in which queens fly [Büchler et al. 2013, sec. 2.2.2: 11 to 16 h]. */
const FLIGHT_HOURS = { from: 11, to: 16 };

function leaveAlone(tables: Tables, running: readonly RunningBatch[], today: Day): readonly LeaveAlone[] {
  return handsOffOn(running, today).flatMap(({ batch, span, colonyId }): readonly LeaveAlone[] => {
    const rest = { step: span.step, batchId: batch.id, batch: batch.code, until: isoOfDay(span.to) };
    if (colonyId !== null) {
      const colony = tables.colonies.get(colonyId);
      const yard = colony?.yardId ? (tables.yards.get(colony.yardId)?.name ?? null) : null;
      return colony ? [{ what: colony.code, hiveId: colony.id, boxes: [], yard, hours: null, ...rest }] : [];
    }
    const boxes = tables.placements
      .where({ batchId: batch.id, endedOn: null })
      .flatMap((placement) => tables.boxes.get(placement.boxId) ?? []);
    return [...Map.groupBy(boxes, (box) => box.yardId)].map(([yardId, ofYard]) => ({
      what: shortCodes(ofYard.map((box) => box.code)),
      hiveId: null,
      boxes: ofYard.map((box) => box.code),
      yard: yardId === null ? null : (tables.yards.get(yardId)?.name ?? null),
      hours: FLIGHT_HOURS,
      ...rest,
    }));
  });
}
