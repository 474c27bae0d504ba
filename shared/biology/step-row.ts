import type { Confidence, Hardness, Step, StepKind, StepPlace, TimeOfDay } from '../model/step.ts';
import type { Material } from './materials.ts';

/**
 * What a step's days count from: the day larvae are given; the day ripe cells are placed; or the expected day of
 * emergence. The last two move with what is seen, the first does not.
 */
export type StepBase = 'larvae' | 'placing' | 'emergence';

/** One line of a step table. */
export interface StepRow {
  readonly step: Step;
  readonly kind: StepKind;
  readonly place: StepPlace;
  readonly base: StepBase;
  /** Earliest, expected and latest day, whole days from the base. */
  readonly days: readonly [number, number, number];
  readonly timeOfDay: TimeOfDay;
  readonly hardness: Hardness;
  /** Minutes of work for a batch of about 20 cells. Planning figures: common practice, no source. */
  readonly minutes: number | null;
  readonly materials: readonly Material[];
  readonly source: string;
  readonly confidence: Confidence;
}
