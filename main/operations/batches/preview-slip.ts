import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { SlipChange, SlipView, SlipWindow } from '../../../shared/contract/slip.ts';
import { addDays, dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { Step } from '../../../shared/model/step.ts';
import type { CalendarInput, Timetable } from '../../../shared/model/timetable.ts';
import { compareTimetables, type StepWindow } from '../../engine/calendar/compare-timetables.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { calendarInput, factView, sightingOf, timetableOf } from '../batch-calendar.ts';
import { eventDays, eventId } from '../event-days.ts';
import { labelRecords, staleLabels } from '../label-texts.ts';
import type { Desk } from '../operation.ts';
import { inUseOnItsDays, markRefusal, moveRefusal, movesWholeBatch } from './step-rules.ts';

/** What a step marked or moved, or something seen, would do to every date of the batch. Nothing is written. */
export function previewSlip({ workbook: { tables } }: Desk, slip: SlipChange): Result<SlipView, Refusal> {
  const batch = tables.batches.get(slip.change.batchId);
  if (!batch) return refuse({ kind: 'batch-not-found' });
  const refusal = slipRefusal(tables, batch, slip);
  if (refusal) return refuse(refusal);
  const planned = planTimetable(withChange(tables, batch, slip));
  if (!planned.ok) return planned;
  const inUse = beginsAnew(tables, batch, slip) ? inUseOnItsDays(tables, batch, planned.value) : null;
  if (inUse) return refuse(inUse);
  return ok(slipView(tables, batch, planned.value, 'step' in slip.change ? slip.change.step : null));
}

function slipRefusal(tables: Tables, batch: Batch, slip: SlipChange): Refusal | null {
  if (slip.kind === 'mark') return markRefusal(tables, batch, slip.change);
  if (slip.kind === 'unsee' && tables.observations.get(slip.change.observationId)?.batchId !== batch.id)
    return { kind: 'observation-not-found' };
  return slip.kind === 'move' ? moveRefusal(tables, batch, slip.change) : null;
}

/** All the batch's calendar is reckoned from, with the new fact among it. */
function withChange(tables: Tables, batch: Batch, slip: SlipChange): CalendarInput {
  const input = calendarInput(tables, batch);
  if (slip.kind === 'see') {
    const { change } = slip;
    return { ...input, seen: [...input.seen.filter(({ id }) => id !== change.id), sightingOf(change)] };
  }
  if (slip.kind === 'warmth') return { ...input, sealedStageCelsius: slip.change.sealedCelsius };
  if (slip.kind === 'unsee') return { ...input, seen: input.seen.filter(({ id }) => id !== slip.change.observationId) };
  const { step } = slip.change;
  const others = input.done.filter((one) => one.step !== step);
  if (slip.kind === 'unmark') return { ...input, done: others };
  if (slip.kind === 'mark') return { ...input, done: [...others, { step, on: dayOfIso(slip.change.doneOn) }] };
  const to = dayOfIso(slip.change.movedTo);
  const moved = input.moved.filter((one) => one.step !== step);
  if (!movesWholeBatch(tables, batch, step))
    return { ...input, moved: [...moved, { step, to, reason: slip.change.reason }] };
  const days = to - dayOfIso(batch.anchorOn);
  const along = moved.map((one) => ({ ...one, to: addDays(one.to, days) }));
  return { ...input, moved: along, anchor: { step, on: to } };
}

/** Whether it is the beginning of the batch that is moved, and all of it with it. */
const beginsAnew = (tables: Tables, batch: Batch, slip: SlipChange): boolean =>
  slip.kind === 'move' && movesWholeBatch(tables, batch, slip.change.step);

function slipView(tables: Tables, batch: Batch, after: Timetable, own: Step | null): SlipView {
  const { lines } = compareTimetables(timetableOf(tables, batch), after);
  return {
    lines: lines.map((line) => ({ ...line, was: isoWindow(line.was), becomes: isoWindow(line.becomes) })),
    otherStepsMoved: lines.filter(({ step, changed }) => changed && step !== own).length,
    labelsOutOfDate: staleLabels(tables, labelRecords(tables, batch, after)).map(({ box }) => box),
    calendarEntriesOutOfDate: staleEntries(tables, batch, after),
    contradictions: after.contradictions.map(({ one, other }) => ({ one: factView(one), other: factView(other) })),
  };
}

/** Entries given out in a calendar file whose days would differ, or whose step would fall away. */
function staleEntries(tables: Tables, batch: Batch, after: Timetable): number {
  const daysById = new Map(after.steps.map((step) => [eventId(batch.id, step.step), eventDays(step)]));
  return tables.calendarExports.where({ batchId: batch.id, cancelled: false }).filter((entry) => {
    const days = daysById.get(entry.id);
    return !days || isoOfDay(days.from) !== entry.fromOn || isoOfDay(days.to) !== entry.toOn;
  }).length;
}

const isoWindow = (window: StepWindow | null): SlipWindow | null =>
  window && {
    earliest: isoOfDay(window.earliest),
    expected: isoOfDay(window.expected),
    latest: isoOfDay(window.latest),
  };
