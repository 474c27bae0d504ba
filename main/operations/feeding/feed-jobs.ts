import type { Notice } from '../../../shared/contract/refusal.ts';
import { dayOfIso } from '../../../shared/kernel/day.ts';
import type { Feeding } from '../../../shared/model/feeding.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { hiveOfJob } from '../shut-hives.ts';

const FEED_JOB = 'feed-start';

/**
 * Marks the jobs as done that the feeding of a hive answers: to begin feeding, open at that hive, on a day within the
 * job's window. Outside the window it may be another feeding; the person marks the job then.
 */
export function markFeedJobs(
  { ids, today }: Desk,
  tables: Tables,
  { colonyId, fedOn }: Pick<Feeding, 'colonyId' | 'fedOn'>,
): readonly Notice[] {
  if (colonyId === null) return [];
  const day = dayOfIso(fedOn);
  if (day > today) return [];
  const answered = runningBatches(tables, today).filter(({ batch, timetable }) =>
    timetable.steps.some(
      (step) =>
        step.step === FEED_JOB &&
        step.doneOn === null &&
        hiveOfJob(batch, step) === colonyId &&
        step.earliest <= day &&
        day <= step.latest,
    ),
  );
  for (const { batch } of answered)
    tables.stepsDone.insert({ id: ids.next(), batchId: batch.id, step: FEED_JOB, doneOn: fedOn, note: null });
  return answered.map(({ batch }) => ({ kind: 'feed-job-done', batch: batch.code }));
}
