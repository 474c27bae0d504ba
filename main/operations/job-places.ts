import type { Job } from '../../shared/contract/today.ts';
import type { Batch } from '../../shared/model/batch.ts';
import type { DatedStep } from '../../shared/model/step.ts';
import type { Tables } from '../workbook/workbook.ts';
import { lastLook } from './batch-lines.ts';
import { answersLook, LOOK_STEPS } from './look-answers.ts';
import { hiveOfJob } from './shut-hives.ts';

/** Where a job is done; null when there is nothing left to do it on, so that it is no job at all. */
export function placeOf(tables: Tables, batch: Batch, step: DatedStep): Pick<Job, 'where' | 'yard'> | null {
  const colonyId = hiveOfJob(batch, step);
  if (colonyId !== null) {
    const colony = tables.colonies.get(colonyId);
    if (!colony) return { where: { kind: 'unknown' }, yard: null };
    return {
      where: { kind: 'hive', id: colony.id, code: colony.code },
      yard: colony.yardId === null ? null : (tables.yards.get(colony.yardId)?.name ?? null),
    };
  }
  if (step.place !== 'boxes') return { where: { kind: 'unknown' }, yard: null };
  return boxesOf(tables, batch, step);
}

/** Boxes that still wait for this step: for a look only those whose last result does not answer it already. */
function boxesOf(tables: Tables, batch: Batch, step: DatedStep): Pick<Job, 'where' | 'yard'> | null {
  const isLook = LOOK_STEPS.includes(step.step);
  const placements = tables.placements.where({ batchId: batch.id, endedOn: null });
  const waiting = placements
    .filter((placement) => !isLook || !answersLook(step.step, lastLook(tables, placement.id)?.result ?? null))
    .flatMap((placement) => tables.boxes.get(placement.boxId) ?? [])
    .toSorted((a, b) => a.walkOrder - b.walkOrder);
  if (waiting.length === 0) return isLook || placements.length > 0 ? null : { where: { kind: 'unknown' }, yard: null };
  const yards = new Set(
    waiting.flatMap(({ yardId }) => (yardId === null ? [] : (tables.yards.get(yardId)?.name ?? []))),
  );
  return {
    where: { kind: 'boxes', codes: waiting.map((box) => box.code) },
    yard: yards.size === 0 ? null : [...yards].join(', '),
  };
}
