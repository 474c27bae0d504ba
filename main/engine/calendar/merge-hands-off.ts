import { addDays, type Day, laterOf } from '../../../shared/kernel/day.ts';
import type { HandsOffSpan } from '../../../shared/model/step.ts';

/** Why a hive or box is to be left alone. */
export interface HandsOffReason {
  readonly batch: string;
  /** `introduction`: a queen was just given to the hive. */
  readonly step: HandsOffSpan['step'] | 'introduction';
  readonly from: Day;
  readonly to: Day;
}

/** A span of one batch on one hive or box (`subject`, any stable name). Both ends included. */
export interface HandsOffOf extends HandsOffReason {
  readonly subject: string;
}

export interface MergedHandsOff {
  readonly subject: string;
  readonly from: Day;
  readonly to: Day;
  /** By first day, then by batch. */
  readonly reasons: readonly HandsOffReason[];
}

/**
 * Joins the hands-off spans of all batches that share a hive or box; spans that touch or overlap become one, so that a
 * day is free only when nothing forbids it. By subject, then by day.
 */
export function mergeHandsOff(spans: readonly HandsOffOf[]): readonly MergedHandsOff[] {
  const merged: MergedHandsOff[] = [];
  for (const { subject, ...reason } of spans.toSorted(bySubjectAndDay)) {
    const last = merged.at(-1);
    if (last && last.subject === subject && reason.from <= addDays(last.to, 1)) {
      merged[merged.length - 1] = { ...last, to: laterOf(last.to, reason.to), reasons: [...last.reasons, reason] };
    } else {
      merged.push({ subject, from: reason.from, to: reason.to, reasons: [reason] });
    }
  }
  return merged;
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const bySubjectAndDay = (a: HandsOffOf, b: HandsOffOf): number =>
  compareText(a.subject, b.subject) || a.from - b.from || compareText(a.batch, b.batch) || a.to - b.to;

/** The span that forbids opening a subject on a day; null when the day is free. */
export function handsOffOn(merged: readonly MergedHandsOff[], subject: string, day: Day): MergedHandsOff | null {
  return merged.find((span) => span.subject === subject && span.from <= day && day <= span.to) ?? null;
}

export interface ForbiddenDay {
  readonly span: MergedHandsOff;
  /** The free days nearest before and after the span, the nearer first. */
  readonly alternatives: readonly Day[];
}

/** When a job on `day` falls into a hands-off span of its subject: that span and the two nearest free days. */
export function findForbiddenDay(merged: readonly MergedHandsOff[], subject: string, day: Day): ForbiddenDay | null {
  const span = handsOffOn(merged, subject, day);
  if (!span) return null;
  // Merged spans of one subject never touch, so the days beside one are free.
  const before = addDays(span.from, -1);
  const after = addDays(span.to, 1);
  return { span, alternatives: day - before <= after - day ? [before, after] : [after, before] };
}
