import { addDays, type Day, earlierOf, laterOf } from '../../../shared/kernel/day.ts';
import { type DatedStep, STEPS } from '../../../shared/model/step.ts';
import type { CalendarInput } from '../../../shared/model/timetable.ts';
import type { LaidOut, LaidOutRow } from './lay-out.ts';

/**
 * Gives every laid-out row its civil days. A step done stands on its day; one moved by the person is expected there; one
 * that was dropped keeps its days and says so.
 */
export function dateSteps({ rows }: LaidOut, input: CalendarInput, dayZero: Day): readonly DatedStep[] {
  const { done, moved, dropped = [] } = input;
  if (done.length + moved.length + dropped.length === 0) return rows.map((row) => asForecast(row, dayZero));
  const steps = rows.map((row) => {
    const doneOn = done.find((one) => one.step === row.row.step)?.on;
    if (doneOn !== undefined) return asDone(row, doneOn, dayZero);
    const movedTo = moved.find((one) => one.step === row.row.step)?.to;
    const droppedOn = dropped.find((one) => one.step === row.row.step)?.on ?? null;
    const dated = { ...asForecast(row, dayZero), droppedOn };
    return movedTo === undefined ? dated : asMoved(dated, movedTo, dayZero);
  });
  return steps.toSorted((a, b) => a.expected - b.expected || orderOf(a) - orderOf(b));
}

const orderOf = ({ step }: DatedStep): number => STEPS.indexOf(step);

function asForecast({ row, earliest, expected, latest }: LaidOutRow, dayZero: Day): DatedStep {
  return {
    step: row.step,
    kind: row.kind,
    place: row.place,
    earliest: addDays(dayZero, earliest),
    expected: addDays(dayZero, expected),
    latest: addDays(dayZero, latest),
    timeOfDay: row.timeOfDay,
    hardness: row.hardness,
    daysAfterLarvae: expected,
    doneOn: null,
    droppedOn: null,
    minutes: row.minutes,
    materials: row.materials,
    source: row.source,
    confidence: row.confidence,
  };
}

function asDone(row: LaidOutRow, doneOn: Day, dayZero: Day): DatedStep {
  const day = { earliest: doneOn, expected: doneOn, latest: doneOn };
  return { ...asForecast(row, dayZero), ...day, doneOn, daysAfterLarvae: doneOn - dayZero };
}

function asMoved(step: DatedStep, to: Day, dayZero: Day): DatedStep {
  return {
    ...step,
    earliest: earlierOf(step.earliest, to),
    expected: to,
    latest: laterOf(step.latest, to),
    daysAfterLarvae: to - dayZero,
  };
}
