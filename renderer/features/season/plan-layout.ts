import type { BatchLine } from '../../../shared/contract/batches.ts';
import { addDays, dayOfIso, type IsoDay, isoOfDay, startOfWeek, type WeekStart } from '../../../shared/kernel/day.ts';

/** Batches that are not over, on one axis of whole weeks. */
export interface PlanAxis {
  readonly from: IsoDay;
  readonly weeks: readonly IsoDay[];
  readonly lines: readonly { readonly line: BatchLine; readonly start: number; readonly span: number }[];
}

/** Starts and spans are shares of the axis, 0 to 1; null when no batch is planned or running. */
export function planAxis(batches: readonly BatchLine[], weekStart: WeekStart): PlanAxis | null {
  const open = batches
    .filter((line) => line.state !== 'closed')
    .toSorted((a, b) => (a.larvaeGivenOn < b.larvaeGivenOn ? -1 : 1));
  if (open.length === 0) return null;
  const first = Math.min(...open.map((line) => dayOfIso(line.stream.from)));
  const last = Math.max(...open.map((line) => dayOfIso(line.stream.to)));
  const firstDay = dayOfIso(isoOfDay(first as never));
  const weekFrom = startOfWeek(firstDay, weekStart);
  const weeks = Math.ceil((last + 1 - weekFrom) / 7);
  const days = weeks * 7;
  return {
    from: isoOfDay(weekFrom),
    weeks: Array.from({ length: weeks }, (_, week) => isoOfDay(addDays(weekFrom, week * 7))),
    lines: open.map((line) => ({
      line,
      start: (dayOfIso(line.stream.from) - weekFrom) / days,
      span: (dayOfIso(line.stream.to) - dayOfIso(line.stream.from)) / days,
    })),
  };
}
