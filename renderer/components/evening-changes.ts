import type { Job, LeaveAlone, TodayView } from '../../shared/contract/today.ts';

export interface EveningChanges {
  readonly appeared: readonly Job[];
  readonly vanished: readonly Job[];
  /** Jobs that are left for fewer boxes than before. */
  readonly fewer: readonly Job[];
  readonly shut: readonly LeaveAlone[];
  readonly freed: readonly LeaveAlone[];
}

const jobKey = (job: Job): string => `${job.batchId} ${job.step}`;
const leaveKey = (one: LeaveAlone): string => `${one.batch} ${one.step} ${one.what}`;
const boxesOf = (job: Job): number => (job.where.kind === 'boxes' ? job.where.codes.length : 0);

/** A job of tomorrow may be due as well; it is one job. */
function jobsOf(view: TodayView): ReadonlyMap<string, Job> {
  const all = [...view.late, ...view.due, ...view.early, ...view.tomorrow];
  return new Map(all.toReversed().map((job) => [jobKey(job), job]));
}

const without = <One>(list: readonly One[], others: readonly One[], key: (one: One) => string): readonly One[] => {
  const known = new Set(others.map(key));
  return list.filter((one) => !known.has(key(one)));
};

/** Today before and after an evening's typing, side by side: what came, what went, what is left for fewer boxes. */
export function eveningChanges(before: TodayView, after: TodayView): EveningChanges {
  const [was, is] = [jobsOf(before), jobsOf(after)];
  return {
    appeared: without([...is.values()], [...was.values()], jobKey),
    vanished: without([...was.values()], [...is.values()], jobKey),
    fewer: [...is.values()].filter((job) => boxesOf(job) < boxesOf(was.get(jobKey(job)) ?? job)),
    shut: without(after.leaveAlone, before.leaveAlone, leaveKey),
    freed: without(before.leaveAlone, after.leaveAlone, leaveKey),
  };
}
