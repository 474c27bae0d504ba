import type { BatchLine } from '../../../shared/contract/batches.ts';
import { addDays, dayOfIso, type IsoDay, isoOfDay, startOfWeek, type WeekStart } from '../../../shared/kernel/day.ts';

/** Batches that are not over, on one axis of whole weeks. */
export interface PlanAxis {
  readonly from: IsoDay;
  readonly days: number;
  readonly weeks: readonly IsoDay[];
  readonly lines: readonly BatchLine[];
}

/** Null when no batch is planned or running. */
export function planAxis(batches: readonly BatchLine[], weekStart: WeekStart): PlanAxis | null {
  const lines = batches
    .filter((line) => line.state !== 'closed')
    .toSorted((a, b) => (a.larvaeGivenOn < b.larvaeGivenOn ? -1 : 1));
  const from = lines.map(({ stream }) => stream.from).toSorted()[0];
  const to = lines
    .map(({ stream }) => stream.to)
    .toSorted()
    .at(-1);
  if (from === undefined || to === undefined) return null;
  const weekFrom = startOfWeek(dayOfIso(from), weekStart);
  const weeks = Math.ceil((dayOfIso(to) + 1 - weekFrom) / 7);
  return {
    from: isoOfDay(weekFrom),
    days: weeks * 7,
    weeks: Array.from({ length: weeks }, (_, week) => isoOfDay(addDays(weekFrom, week * 7))),
    lines,
  };
}
