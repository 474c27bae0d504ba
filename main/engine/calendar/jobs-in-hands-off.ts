import type { Clash, PlannedBatch } from '../../../shared/model/clash.ts';
import { findForbiddenDay, type HandsOffOf, mergeHandsOff } from './merge-hands-off.ts';
import { isOpenJob } from './open-steps.ts';

/**
 * Open jobs on a breeder on days on which that hive must be left alone, because it builds cells for another batch. Where
 * two batches share a builder the builder itself is the clash, and nothing is said here.
 */
export function jobsInHandsOff(batches: readonly PlannedBatch[]): readonly Clash[] {
  return batches.flatMap(({ id, breederId, timetable }): readonly Clash[] => {
    if (breederId === null) return [];
    const shut = mergeHandsOff(batches.filter((other) => other.id !== id).flatMap(builderSpans));
    return timetable.steps
      .filter((step) => isOpenJob(step) && step.place === 'breeder')
      .flatMap((step): readonly Clash[] => {
        const found = findForbiddenDay(shut, breederId, step.expected);
        const reason = found?.span.reasons.find(({ from, to }) => from <= step.expected && step.expected <= to);
        if (!found || !reason) return [];
        const { alternatives, span } = found;
        return [
          {
            kind: 'job-in-hands-off',
            batch: id,
            other: reason.batch,
            hiveId: breederId,
            step: step.step,
            on: step.expected,
            until: span.to,
            alternatives,
          },
        ];
      });
  });
}

const builderSpans = ({ id, builderId, timetable }: PlannedBatch): readonly HandsOffOf[] =>
  builderId === null
    ? []
    : timetable.handsOff
        .filter(({ place }) => place === 'builder')
        .map(({ step, from, to }) => ({ subject: builderId, batch: id, step, from, to }));
