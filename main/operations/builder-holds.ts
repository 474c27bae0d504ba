import type { Day } from '../../shared/kernel/day.ts';
import type { Id } from '../../shared/kernel/id.ts';
import type { Timetable } from '../../shared/model/timetable.ts';
import type { Tables } from '../workbook/workbook.ts';
import { timetableOf } from './batch-calendar.ts';

/** Days on which a builder carries a batch's cells: from the larvae given to the day the ripe cells leave it. */
export interface BuilderHold {
  readonly builderId: Id;
  readonly batchId: Id;
  readonly batch: string;
  readonly from: Day;
  /** The day the cells leave, done or expected; the builder can take larvae on that same day. */
  readonly until: Day;
}

export function holdOf(timetable: Timetable): Pick<BuilderHold, 'from' | 'until'> {
  const placing = timetable.steps.find((step) => step.step === 'place-cells');
  const until = placing ? (placing.doneOn ?? placing.expected) : timetable.emergence.expected;
  return { from: timetable.larvaeGivenOn, until };
}

/** Holds of all batches that are not closed, or of one builder when it is named. */
export function builderHolds(tables: Tables, builderId?: Id): readonly BuilderHold[] {
  const batches = tables.batches.where(builderId === undefined ? { closedOn: null } : { closedOn: null, builderId });
  return batches.flatMap((batch) =>
    batch.builderId === null
      ? []
      : [{ builderId: batch.builderId, batchId: batch.id, batch: batch.code, ...holdOf(timetableOf(tables, batch)) }],
  );
}
