import type { Day } from '../../shared/kernel/day.ts';
import type { Id } from '../../shared/kernel/id.ts';
import type { DatedStep, Step } from '../../shared/model/step.ts';

/** The permanent name of a step's event in calendar files. */
export const eventId = (batchId: Id, step: Step): Id => `${batchId}.${step}@ripecell`;

/** A job stands on its one day; what lasts or may come any day of a window takes its whole span. */
export function eventDays({
  kind,
  earliest,
  expected,
  latest,
  doneOn,
}: Pick<DatedStep, 'kind' | 'earliest' | 'expected' | 'latest' | 'doneOn'>): { readonly from: Day; readonly to: Day } {
  const day = doneOn ?? expected;
  return kind === 'job' || doneOn !== null ? { from: day, to: day } : { from: earliest, to: latest };
}
