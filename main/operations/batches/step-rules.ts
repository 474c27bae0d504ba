import type { z } from 'zod';
import type { MarkStep, MoveStep } from '../../../shared/contract/batches.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { DatedStep, Step } from '../../../shared/model/step.ts';
import { canBeDropped } from '../../engine/calendar/open-steps.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { planBatch, timetableOf } from '../batch-calendar.ts';
import { LOOK_STEPS } from '../look-answers.ts';
import { builderRefusal } from './check-start.ts';

/** The step as dated now, or why there is none. */
function stepOf(tables: Tables, batch: Batch, step: Step): Result<DatedStep, Refusal> {
  const dated = timetableOf(tables, batch).steps.find((one) => one.step === step);
  return dated ? ok(dated) : refuse({ kind: 'step-not-in-timetable', field: 'step', step });
}

/** Why a step cannot be marked as done on that day; null when it can. */
export function markRefusal(tables: Tables, batch: Batch, input: z.infer<typeof MarkStep>): Refusal | null {
  const dated = stepOf(tables, batch, input.step);
  if (!dated.ok) return dated.refusal;
  const known = tables.stepsDone.where({ batchId: batch.id, step: input.step })[0];
  if (known && known.id !== input.id) return { kind: 'step-already-done', field: 'step', step: input.step };
  return beforeStart(tables, batch, dated.value, input.doneOn);
}

/** Steps after the larvae were given cannot be done before that day. */
function beforeStart(tables: Tables, batch: Batch, step: DatedStep, doneOn: string): Refusal | null {
  const start = timetableOf(tables, batch).larvaeGivenOn;
  if (step.daysAfterLarvae <= 0 || dayOfIso(doneOn) >= start) return null;
  return { kind: 'day-before-start', field: 'doneOn', day: doneOn, start: isoOfDay(start) };
}

/** A look marked before any queen can be out is kept, for it may have been made, and named. */
export function earlyLookNotice(tables: Tables, batch: Batch, step: Step, doneOn: string): readonly Notice[] {
  const { emergence } = timetableOf(tables, batch);
  if (!LOOK_STEPS.includes(step) || dayOfIso(doneOn) >= emergence.earliest) return [];
  return [{ kind: 'look-before-emergence', step, earliest: isoOfDay(emergence.earliest) }];
}

/** Why a step cannot be put on that day; null when it can. Biology sets the window, not the person. */
export function moveRefusal(tables: Tables, batch: Batch, input: z.infer<typeof MoveStep>): Refusal | null {
  const dated = stepOf(tables, batch, input.step);
  if (!dated.ok) return dated.refusal;
  if (dated.value.doneOn !== null) return { kind: 'step-already-done', field: 'step', step: input.step };
  if (movesWholeBatch(tables, batch, input.step)) return null;
  const { earliest, latest } = dated.value;
  const to = dayOfIso(input.movedTo);
  if (to >= earliest && to <= latest) return null;
  return { kind: 'move-past-window', field: 'movedTo', earliest: isoOfDay(earliest), latest: isoOfDay(latest) };
}

/** Why a step cannot be dropped; null when it can. A job that biology needs is done, or its batch ends without it. */
export function dropRefusal(tables: Tables, batch: Batch, step: Step): Refusal | null {
  const dated = stepOf(tables, batch, step);
  if (!dated.ok) return dated.refusal;
  if (dated.value.doneOn !== null) return { kind: 'step-already-done', field: 'step', step };
  return canBeDropped({ ...dated.value, droppedOn: null }) ? null : { kind: 'step-needed', field: 'step', step };
}

/** While nothing was done yet, the first day of a batch is the person's own choice, and all others follow it. */
export const movesWholeBatch = (tables: Tables, batch: Batch, step: Step): boolean =>
  step === batch.anchorStep && tables.stepsDone.where({ batchId: batch.id }).length === 0;

/** A batch cannot be moved onto days on which its builder carries another; as at its start. */
export const inUseOnItsDays = (tables: Tables, batch: Batch, timetable = timetableOf(tables, batch)): Refusal | null =>
  batch.builderId === null ? null : builderRefusal(tables, batch.builderId, timetable, batch.id);

/** After a write: the calendar must still be readable with the new fact in it, else the change is taken back. */
export function stillReadable(tables: Tables, batch: Batch): Refusal | null {
  const planned = planBatch(tables, batch);
  return planned.ok ? null : planned.refusal;
}
