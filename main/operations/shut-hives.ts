import { addDays, type Day } from '../../shared/kernel/day.ts';
import type { Batch } from '../../shared/model/batch.ts';
import type { DatedStep } from '../../shared/model/step.ts';
import { handsOffOn, type RunningBatch } from './hands-off.ts';

/** The hive a job opens; null for jobs on boxes, or where the hive is not named in the batch. */
export function hiveOfJob(batch: Batch, step: Pick<DatedStep, 'place'>): string | null {
  if (step.place === 'builder') return batch.builderId;
  return step.place === 'breeder' ? batch.breederId : null;
}

/** How far to each side a free day is looked for. */
const SEARCH_DAYS = 14;

/** The free day before and the free day after on which no batch but the named one shuts the hive. */
export function freeDaysNear(
  running: readonly RunningBatch[],
  colonyId: string,
  batchId: string | null,
  day: Day,
): readonly Day[] {
  const isShut = (on: Day) =>
    handsOffOn(running, on).some((one) => one.colonyId === colonyId && one.batch.id !== batchId);
  const nearest = (direction: 1 | -1) =>
    Array.from({ length: SEARCH_DAYS }, (_, index) => addDays(day, direction * (index + 1))).find((on) => !isShut(on));
  return [nearest(-1), nearest(1)].filter((one) => one !== undefined);
}
