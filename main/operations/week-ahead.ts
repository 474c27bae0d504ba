import { addDays, type Day, laterOf } from '../../shared/kernel/day.ts';
import type { Id } from '../../shared/kernel/id.ts';
import { ownWords } from '../../shared/model/method-copy.ts';
import type { Step } from '../../shared/model/step.ts';
import { isOpenJob } from '../engine/calendar/open-steps.ts';
import { isLateWorthNaming, stepState } from '../engine/calendar/step-state.ts';
import type { Tables } from '../workbook/workbook.ts';
import { copyOf } from './batch-calendar.ts';
import { handsOffOn, type RunningBatch } from './hands-off.ts';
import { placeOf } from './job-places.ts';

/** An open job: the batch, the step, and where it is done as codes of hives or boxes; none where that is not known. */
export interface OpenJob {
  readonly batch: string;
  readonly step: Step;
  readonly ownTitle: string | null;
  readonly colonyId: Id | null;
  readonly codes: readonly string[];
  readonly yard: string | null;
  /** Its last day has passed. */
  readonly late: boolean;
}

/** A day with its open jobs and with what must be left alone on it, as codes of hives and batches of boxes. */
export interface DayAhead {
  readonly on: Day;
  readonly jobs: readonly OpenJob[];
  readonly shut: readonly { readonly colonyId: Id | null; readonly batchId: Id; readonly to: Day }[];
}

/** Days of work one after another, the first with all that is due since an earlier day or late and still worth doing. */
export function daysAhead(
  tables: Tables,
  running: readonly RunningBatch[],
  first: Day,
  days: number,
): readonly DayAhead[] {
  const open = running.flatMap(({ batch, timetable }) =>
    timetable.steps.filter(isOpenJob).flatMap((step) => {
      const state = stepState(step, timetable.steps, first);
      const late = state === 'late';
      if (state === 'passed') return [];
      if (late && !isLateWorthNaming(step, first)) return [];
      const place = placeOf(tables, batch, step);
      if (place === null) return [];
      const { where, yard } = place;
      const job: OpenJob = {
        batch: batch.code,
        step: step.step,
        ownTitle: ownWords(copyOf(tables, batch), step.step).title,
        colonyId: where.kind === 'hive' ? where.id : null,
        codes: where.kind === 'hive' ? [where.code] : where.kind === 'boxes' ? where.codes : [],
        yard,
        late,
      };
      return [{ job, on: laterOf(step.expected, first) }];
    }),
  );
  return Array.from({ length: days }, (_, index) => addDays(first, index)).map((on) => ({
    on,
    jobs: open.filter((one) => one.on === on).map(({ job }) => job),
    shut: handsOffOn(running, on).map(({ batch, span, colonyId }) => ({ colonyId, batchId: batch.id, to: span.to })),
  }));
}
