import type { Day } from '../../shared/kernel/day.ts';
import type { Batch } from '../../shared/model/batch.ts';
import type { HandsOffSpan } from '../../shared/model/step.ts';
import type { Timetable } from '../../shared/model/timetable.ts';
import type { Tables } from '../workbook/workbook.ts';
import { timetableOf } from './batch-calendar.ts';
import { batchState } from './batch-lines.ts';

/** One running batch with its calendar, read once for a whole page. */
export interface RunningBatch {
  readonly batch: Batch;
  readonly timetable: Timetable;
}

/** Batches that are planned or running: those with jobs and hands-off days ahead. */
export function runningBatches(tables: Tables, today: Day): readonly RunningBatch[] {
  return tables.batches.where({ closedOn: null }).flatMap((batch) => {
    const timetable = timetableOf(tables, batch);
    return batchState(tables, batch, timetable, today) === 'closed' ? [] : [{ batch, timetable }];
  });
}

/** A hands-off span of one batch on its builder or on its boxes. */
export interface HandsOffOn {
  readonly batch: Batch;
  readonly span: HandsOffSpan;
  readonly colonyId: string | null;
}

export function handsOffOn(running: readonly RunningBatch[], day: Day): readonly HandsOffOn[] {
  return running.flatMap(({ batch, timetable }) =>
    timetable.handsOff
      .filter((span) => span.from <= day && day <= span.to)
      .map((span) => ({ batch, span, colonyId: span.place === 'builder' ? batch.builderId : null })),
  );
}
