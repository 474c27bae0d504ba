import type { Drafts } from '../../../shared/contract/drafts.ts';
import type { Job } from '../../../shared/contract/today.ts';
import { addDays, dayOfIso, earlierOf, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { unreachable } from '../../../shared/kernel/unreachable.ts';
import { STEPS } from '../../../shared/model/step.ts';
import { draftOf } from '../../client/draft-text.ts';

/** What can be said of a job in the evening; number-pad twins as in the grid of looks. */
export const STEP_KEYS = [
  { result: 'today', key: 'D', digit: '1' },
  { result: 'yesterday', key: 'Y', digit: '2' },
  { result: 'as-planned', key: 'P', digit: '3' },
  { result: 'not-done', key: '.', digit: '0' },
] as const;
export type StepResult = (typeof STEP_KEYS)[number]['result'];

export function stepResultOf(key: string): StepResult | null {
  const upper = key === ',' ? '.' : key.toUpperCase();
  return STEP_KEYS.find((one) => one.key === upper || one.digit === key)?.result ?? null;
}

/** The day to be noted, never one to come; null when the job is not done. */
export function doneOn(result: StepResult, today: IsoDay, planned: IsoDay): IsoDay | null {
  switch (result) {
    case 'today':
      return today;
    case 'yesterday':
      return isoOfDay(addDays(dayOfIso(today), -1));
    case 'as-planned':
      return isoOfDay(earlierOf(dayOfIso(planned), dayOfIso(today)));
    case 'not-done':
      return null;
    default:
      return unreachable(result);
  }
}

/** A job that was noted as done and is open once more was taken back elsewhere, as by an undo. */
export function stillNoted<Note extends { readonly result: StepResult }>(
  noted: ReadonlyMap<string, Note>,
  openJobs: readonly string[],
  isSaved: (job: string) => boolean,
): ReadonlyMap<string, Note> {
  return new Map(
    [...noted].filter(([job, { result }]) => result === 'not-done' || !isSaved(job) || !openJobs.includes(job)),
  );
}

export const jobId = (job: Job): string => `${job.batchId} ${job.step}`;

/** The notes half typed for jobs that are not among the open ones. */
export function halfTypedNotes(drafts: Drafts, open: readonly string[]) {
  return Object.entries(drafts).flatMap(([key, text]) => {
    const [kind, job = ''] = key.split(':');
    const [batchId = '', step] = job.split(' ');
    const known = STEPS.find((one) => one === step);
    const note = draftOf(text, '');
    return kind === 'step-note' && known && note && !open.includes(job) ? [{ key, batchId, step: known, note }] : [];
  });
}
