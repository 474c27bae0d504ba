import type { TimetableLine, TimetableView } from '../../shared/contract/timetable.ts';
import { addDays, type Day, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import type { Result } from '../../shared/kernel/result.ts';
import type { Batch } from '../../shared/model/batch.ts';
import type { BoxType } from '../../shared/model/method.ts';
import { dayChanges, type MethodCopy, ownWords } from '../../shared/model/method-copy.ts';
import type { Observation } from '../../shared/model/observation.ts';
import type { DatedStep } from '../../shared/model/step.ts';
import type { CalendarFact, CalendarInput, CalendarRefusal, Seen, Timetable } from '../../shared/model/timetable.ts';
import { flightWeather, type LoggedWeather } from '../../shared/model/weather.ts';
import { dronePlan } from '../engine/calendar/drone-plan.ts';
import { firstFlights } from '../engine/calendar/find-clashes.ts';
import { canBeDropped } from '../engine/calendar/open-steps.ts';
import { planTimetable } from '../engine/calendar/plan-timetable.ts';
import { stepState } from '../engine/calendar/step-state.ts';
import type { Tables } from '../workbook/workbook.ts';

/** The parts of a batch that its calendar is reckoned from. */
export type CalendarFields = Pick<
  Batch,
  | 'method'
  | 'methodCopyId'
  | 'comb'
  | 'builderType'
  | 'anchorStep'
  | 'anchorOn'
  | 'larvaAgeFromHours'
  | 'larvaAgeToHours'
  | 'sealedCelsius'
>;

/** A calendar's input from the form's fields alone: nothing seen, nothing done. */
export function plainInput(tables: Tables, batch: CalendarFields, boxType: BoxType | null): CalendarInput {
  const copy = copyOf(tables, batch);
  return {
    method: batch.method,
    comb: batch.comb,
    builderType: batch.builderType,
    boxType,
    anchor: { step: batch.anchorStep, on: dayOfIso(batch.anchorOn) },
    larvaAgeHours:
      batch.larvaAgeFromHours === null || batch.larvaAgeToHours === null
        ? null
        : [batch.larvaAgeFromHours, batch.larvaAgeToHours],
    sealedStageCelsius: batch.sealedCelsius,
    seen: [],
    done: [],
    moved: [],
    changes: dayChanges(copy),
  };
}

/** A calendar's input with everything the workbook knows of the batch. */
export function calendarInput(tables: Tables, batch: Batch): CalendarInput {
  const observations = tables.observations.where({ batchId: batch.id });
  return {
    ...plainInput(tables, batch, boxTypeOf(tables, batch)),
    seen: observations.map(sightingOf),
    done: tables.stepsDone.where({ batchId: batch.id }).map(({ step, doneOn }) => ({ step, on: dayOfIso(doneOn) })),
    dropped: tables.stepDrops
      .where({ batchId: batch.id })
      .map(({ step, droppedOn }) => ({ step, on: dayOfIso(droppedOn) })),
    weather: weatherFor(tables, batch),
    moved: tables.stepMoves
      .where({ batchId: batch.id })
      .map(({ step, movedTo, reason }) => ({ step, to: dayOfIso(movedTo), reason })),
  };
}

/** From the first day of a batch the last mating flights are less than 60 days away. */
const WEATHER_DAYS = 60;

function weatherFor(tables: Tables, { anchorOn }: Batch): readonly LoggedWeather[] {
  const to = isoOfDay(addDays(dayOfIso(anchorOn), WEATHER_DAYS));
  return tables.weather.between(anchorOn, to).map(flightWeather);
}

/** A stored observation as the calendar reads it. */
export const sightingOf = ({ id, what, seenOn, fromHours, toHours }: Observation): Seen => ({
  id,
  what,
  on: dayOfIso(seenOn),
  hours: fromHours === null || toHours === null ? null : [fromHours, toHours],
});

export const planBatch = (tables: Tables, batch: Batch): Result<Timetable, CalendarRefusal> =>
  planTimetable(calendarInput(tables, batch));

/**
 * The batch's timetable. What is in the workbook was accepted when it was typed; should a file hold facts that this
 * version cannot read together, the plain calendar from day 0 is better than none.
 */
export function timetableOf(tables: Tables, batch: Batch): Timetable {
  const planned = planBatch(tables, batch);
  if (planned.ok) return planned.value;
  const plain = planTimetable(plainInput(tables, batch, boxTypeOf(tables, batch)));
  if (!plain.ok) throw new Error(`Batch ${batch.code} has no calendar: ${plain.refusal.kind}`);
  return plain.value;
}

/** Whether a batch has a timetable at all; one that was typed here has, one from a file may not. */
export const hasCalendar = (tables: Tables, batch: Batch): boolean =>
  planBatch(tables, batch).ok || planTimetable(plainInput(tables, batch, boxTypeOf(tables, batch))).ok;

/** Boxes of one batch are mostly of one type; the first one decides how long they stay shut. */
function boxTypeOf(tables: Tables, batch: Batch): BoxType | null {
  const first = tables.placements.where({ batchId: batch.id })[0];
  return first ? (tables.boxes.get(first.boxId)?.boxType ?? null) : null;
}

/** The batch's own copy of its method; null when it follows a built-in one. */
export const copyOf = (tables: Tables, { methodCopyId }: Pick<Batch, 'methodCopyId'>): MethodCopy | null =>
  methodCopyId === null ? null : tables.methodCopies.get(methodCopyId);

interface TimetableContext {
  readonly today: Day;
  /** Steps the person put on a day, with the reason given; empty = none. */
  readonly moves: ReadonlyMap<string, string>;
  /** The reasons for which steps will not be done; empty = none. */
  readonly drops: ReadonlyMap<string, string>;
  /** The person's own copy of the method, for the words it gives its steps. */
  readonly copy: MethodCopy | null;
  /** First day of mature drones, where the person said when their eggs were laid. */
  readonly dronesMatureFrom: Day | null;
}

export function timetableView(timetable: Timetable, context: TimetableContext): TimetableView {
  const { emergence } = timetable;
  return {
    larvaeGivenOn: isoOfDay(timetable.larvaeGivenOn),
    lines: timetable.steps.map((step) => ({
      ...timetableLine(step, timetable.steps, context.today),
      movedByPerson: context.moves.has(step.step),
      moveReason: context.moves.get(step.step) || null,
      dropReason: step.droppedOn === null ? null : context.drops.get(step.step) || null,
      own: ownWords(context.copy, step.step),
    })),
    handsOff: timetable.handsOff.map((span) => ({ ...span, from: isoOfDay(span.from), to: isoOfDay(span.to) })),
    emergence: {
      earliest: isoOfDay(emergence.earliest),
      expected: isoOfDay(emergence.expected),
      latest: isoOfDay(emergence.latest),
    },
    placeDeadline: isoOfDay(timetable.placeDeadline),
    drones: dronesView(firstFlights(timetable), context.dronesMatureFrom),
    reckonedFrom: factView(timetable.reckonedFrom),
    contradictions: timetable.contradictions.map(({ one, other }) => ({ one: factView(one), other: factView(other) })),
  };
}

function dronesView(fliesFrom: Day, matureFrom: Day | null): TimetableView['drones'] {
  const { layLatest, combInAdvised } = dronePlan(fliesFrom);
  return {
    fliesFrom: isoOfDay(fliesFrom),
    layLatest: isoOfDay(layLatest),
    combInAdvised: isoOfDay(combInAdvised),
    matureFrom: matureFrom === null ? null : isoOfDay(matureFrom),
  };
}

function timetableLine(
  step: DatedStep,
  steps: readonly DatedStep[],
  today: Day,
): Omit<TimetableLine, 'own' | 'movedByPerson' | 'moveReason' | 'dropReason'> {
  return {
    ...step,
    earliest: isoOfDay(step.earliest),
    expected: isoOfDay(step.expected),
    latest: isoOfDay(step.latest),
    doneOn: step.doneOn === null ? null : isoOfDay(step.doneOn),
    droppedOn: step.droppedOn === null ? null : isoOfDay(step.droppedOn),
    canBeDropped: canBeDropped(step),
    state: stepState(step, steps, today),
  };
}

export function factView(fact: CalendarFact): TimetableView['reckonedFrom'] {
  const on = isoOfDay(fact.on);
  switch (fact.kind) {
    case 'step':
      return { kind: 'step', step: fact.step, on };
    case 'larva-age':
      return { kind: 'larva-age', fromHours: fact.hours[0], toHours: fact.hours[1], on };
    case 'seen':
      return { kind: 'seen', id: fact.id, what: fact.what, on };
  }
}
