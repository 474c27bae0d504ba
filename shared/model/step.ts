import type { Day } from '../kernel/day.ts';

/** Every step a timetable can hold. One word per step, the same in vectors, database and code. */
export const STEPS = [
  'feed-start',
  'insert-frame',
  'cage-queen',
  'release-queen',
  'first-transfer',
  'make-queenless',
  'remove-queen',
  'give-larvae',
  'count-taken',
  'move-to-finisher',
  'open-divider',
  'check-own-cells',
  'thin-cells',
  'sealed',
  'count-sealed',
  'hands-off-cells',
  'stock-boxes',
  'place-cells',
  'set-out',
  'emergence',
  'emergence-check',
  'hands-off-mating',
  'first-look',
  'sealed-brood-look',
  'late-warning',
  'give-up',
] as const;
export type Step = (typeof STEPS)[number];

/** must: biology leaves no choice; should: good practice; may: only where it applies. */
export type Hardness = 'must' | 'should' | 'may';

/** What a step is to the person: a job to do, a span to leave alone, or a happening to expect. */
export type StepKind = 'job' | 'hands-off' | 'event' | 'warning';

/** When in the day the step is best done. */
export type TimeOfDay = 'any' | 'warm-hours' | 'morning' | 'afternoon' | 'evening' | 'before-11-or-after-16';

/** How well a figure is known: two sources agree, one source, or memory and custom. */
export type Confidence = 'high' | 'medium' | 'low';

/** Where the step is done; used to say which hive or box must be opened or left alone. */
export type StepPlace = 'breeder' | 'builder' | 'boxes';

/** One dated line of a timetable. All days are civil days; `earliest <= expected <= latest`. */
export interface DatedStep {
  readonly step: Step;
  readonly kind: StepKind;
  readonly place: StepPlace;
  readonly earliest: Day;
  readonly expected: Day;
  readonly latest: Day;
  readonly timeOfDay: TimeOfDay;
  readonly hardness: Hardness;
  /** Days after the larvae were given; negative before. */
  readonly daysAfterLarvae: number;
  /** The day it was really done, when it was; a done step never moves. */
  readonly doneOn: Day | null;
  /** The day on which the person said that it will not be done; null once it is done after all. It moves no other step. */
  readonly droppedOn: Day | null;
  /** Minutes of work, a planning figure; null when the step is not work. */
  readonly minutes: number | null;
  readonly materials: readonly string[];
  readonly source: string;
  readonly confidence: Confidence;
}

/** A span in which a hive or box must not be opened or shaken. Both ends included. */
export interface HandsOffSpan {
  readonly step: 'hands-off-cells' | 'hands-off-mating';
  readonly place: StepPlace;
  readonly from: Day;
  readonly to: Day;
}

/** What was really seen and narrows the forecast. */
export const OBSERVATION_KINDS = [
  'eggs-first-seen',
  'larva-size',
  'larva-age-note',
  'cells-open',
  'cells-sealed',
  'cells-browned',
  'emerged-hole',
  'queen-seen',
  'first-eggs',
  'sealed-brood',
  'frame-not-drawn',
  'comb-filled-with-nectar',
  'larvae-too-old',
  'cells-torn-down',
  'job-done-on-another-day',
] as const;
export type ObservationKind = (typeof OBSERVATION_KINDS)[number];
