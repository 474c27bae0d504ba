import { addDays, type Day, daysBetween } from '../../shared/kernel/day.ts';
import type { Flow, FlowSizes } from './flowing-paper.ts';
import { POINT } from './text-fit.ts';

/** One batch on the days of the season. */
export interface SeasonStream {
  readonly label: string;
  readonly stages: readonly { readonly from: Day; readonly to: Day }[];
  readonly emergence: { readonly earliest: Day; readonly latest: Day };
}

export interface StreamAxis {
  readonly from: Day;
  readonly to: Day;
  /** First days of months, with their names. */
  readonly months: readonly { readonly on: Day; readonly name: string }[];
}

const LABEL_ROOM = 24;
const BAR = 0.62;
const HAIR = 0.1;
const rowHeight = (sizes: FlowSizes): number => Math.max(5, sizes.table * 1.1 * POINT);

/** Millimetres that so many batches take, with the names of the months above them. */
export const seasonStreamsHeight = (sizes: FlowSizes, batches: number): number =>
  batches * rowHeight(sizes) + sizes.small * 1.6 * POINT + 2;

/**
 * Small streams of all batches on one axis of days: each a bar from its first day to its last, with a stroke where a stage
 * begins and a black stretch over the days on which its queens come out; black only.
 */
export function drawSeasonStreams(
  flow: Flow,
  { from, to, months }: StreamAxis,
  batches: readonly SeasonStream[],
): void {
  const { document, sizes, left, width } = flow;
  const step = (width - LABEL_ROOM) / (daysBetween(from, to) + 1);
  const at = (day: Day): number => left + LABEL_ROOM + daysBetween(from, day) * step;
  const top = flow.y + sizes.small * 1.6 * POINT;
  const bottom = top + batches.length * rowHeight(sizes);
  for (const { on, name } of months) {
    document.line(at(on), flow.y + 1, at(on), bottom, HAIR);
    document.text(name, 'regular', sizes.small, at(on) + 1, flow.y + sizes.small * POINT);
  }
  for (const [index, { label, stages, emergence }] of batches.entries()) {
    const y = top + index * rowHeight(sizes);
    const height = rowHeight(sizes) * BAR;
    document.text(label, 'regular', sizes.table, left, y + height / 2 + sizes.table * 0.33 * POINT);
    for (const { from: begin, to: end } of stages)
      document.rectangle(at(begin), y, Math.max(0.2, at(end) - at(begin)), height, 0.15);
    const middle = y + height / 2;
    document.line(at(emergence.earliest), middle, at(addDays(emergence.latest, 1)), middle, height);
  }
}
