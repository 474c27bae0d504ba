import type { Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { DatedStep, Step } from '../../../shared/model/step.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { planBatch, timetableOf } from '../batch-calendar.ts';

/** The step as dated now, or why there is none. */
export function stepOf(tables: Tables, batch: Batch, step: Step): Result<DatedStep, Refusal> {
  const dated = timetableOf(tables, batch).steps.find((one) => one.step === step);
  return dated ? ok(dated) : refuse({ kind: 'step-not-in-timetable', field: 'step', step });
}

/** Steps after the larvae were given cannot be done before that day. */
export function beforeStart(tables: Tables, batch: Batch, step: DatedStep, doneOn: string): Refusal | null {
  const start = timetableOf(tables, batch).larvaeGivenOn;
  if (step.daysAfterLarvae <= 0 || dayOfIso(doneOn) >= start) return null;
  return { kind: 'day-before-start', field: 'doneOn', day: doneOn, start: isoOfDay(start) };
}

/** After a write: the calendar must still be readable with the new fact in it, else the change is taken back. */
export function stillReadable(tables: Tables, batch: Batch): Refusal | null {
  const planned = planBatch(tables, batch);
  return planned.ok ? null : planned.refusal;
}
