import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import type { Step, StepKind } from '../model/step.ts';
import { MarkStep, MoveStep, RecordObservation, RemoveObservation, SetWarmth, UnmarkStep } from './batches.ts';
import type { CalendarFactView } from './timetable.ts';

/** A fact or choice that moves dates: asked about first, then sent as it is to the operation of its kind. */
export const SlipChange = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('mark'), change: MarkStep }),
  z.object({ kind: z.literal('move'), change: MoveStep }),
  z.object({ kind: z.literal('see'), change: RecordObservation }),
  z.object({ kind: z.literal('unmark'), change: UnmarkStep }),
  z.object({ kind: z.literal('unsee'), change: RemoveObservation }),
  z.object({ kind: z.literal('warmth'), change: SetWarmth }),
]);
export type SlipChange = z.infer<typeof SlipChange>;

export interface SlipWindow {
  readonly earliest: IsoDay;
  readonly expected: IsoDay;
  readonly latest: IsoDay;
}

/** One step of the batch before and after; null where the step is new or falls away. */
export interface SlipViewLine {
  readonly step: Step;
  readonly kind: StepKind;
  readonly was: SlipWindow | null;
  readonly becomes: SlipWindow | null;
  /** Days by which the expected day moves. */
  readonly movesBy: number;
  readonly changed: boolean;
  /** Done: it keeps its day whatever is seen. */
  readonly locked: boolean;
}

/** What a fact would do to a batch's dates. Nothing is written yet. */
export interface SlipView {
  readonly lines: readonly SlipViewLine[];
  /** Other steps than the one that is marked or moved. */
  readonly otherStepsMoved: number;
  /** Boxes whose printed label would no longer be right, in walking order. */
  readonly labelsOutOfDate: readonly string[];
  /** Entries of a calendar file made earlier that would no longer be right. */
  readonly calendarEntriesOutOfDate: number;
  /** Facts that exclude each other once this one is in. */
  readonly contradictions: readonly { readonly one: CalendarFactView; readonly other: CalendarFactView }[];
}
