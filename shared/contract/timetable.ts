import type { IsoDay } from '../kernel/day.ts';
import type { Confidence, Hardness, ObservationKind, Step, StepKind, StepPlace, TimeOfDay } from '../model/step.ts';

export interface OwnWords {
  readonly title: string | null;
  readonly note: string | null;
}

/** One line of a timetable as the page shows it; the words for what, why and caution are in shared/text by step. */
export interface TimetableLine {
  readonly step: Step;
  readonly kind: StepKind;
  readonly place: StepPlace;
  readonly earliest: IsoDay;
  readonly expected: IsoDay;
  readonly latest: IsoDay;
  readonly timeOfDay: TimeOfDay;
  readonly hardness: Hardness;
  readonly daysAfterLarvae: number;
  readonly state: 'done' | 'dropped' | 'late' | 'due' | 'can-be-done' | 'coming' | 'passed';
  readonly doneOn: IsoDay | null;
  /** The day on which the person said that it will not be done; null also when it was done after all. */
  readonly droppedOn: IsoDay | null;
  /** Why, where the person said so. */
  readonly dropReason: string | null;
  /** Biology allows to leave it out, and it is still open. */
  readonly canBeDropped: boolean;
  readonly movedByPerson: boolean;
  /** Why, where the person said so. */
  readonly moveReason: string | null;
  /** What the person's own copy of the method calls the step, and its note; null = as built in. */
  readonly own: OwnWords;
  readonly minutes: number | null;
  readonly materials: readonly string[];
  readonly source: string;
  readonly confidence: Confidence;
}

export interface TimetableView {
  readonly larvaeGivenOn: IsoDay;
  readonly lines: readonly TimetableLine[];
  readonly handsOff: readonly {
    readonly step: Step;
    readonly place: StepPlace;
    readonly from: IsoDay;
    readonly to: IsoDay;
  }[];
  readonly emergence: { readonly earliest: IsoDay; readonly expected: IsoDay; readonly latest: IsoDay };
  /** Last safe day to move cells: earliest plausible emergence less 12 hours. */
  readonly placeDeadline: IsoDay;
  /** First normal mating flights, and by when drones must be begun for them: eggs laid at the latest, comb in as advised. */
  readonly drones: {
    readonly fliesFrom: IsoDay;
    readonly layLatest: IsoDay;
    readonly combInAdvised: IsoDay;
    /** The person's own drones are mature from then on; null = not said when their eggs were laid. */
    readonly matureFrom: IsoDay | null;
  };
  /** The fact the forecast rests on. */
  readonly reckonedFrom: CalendarFactView;
  /** Facts that cannot both be true; the person says which one holds. */
  readonly contradictions: readonly { readonly one: CalendarFactView; readonly other: CalendarFactView }[];
}

/** What all jobs of a batch ask for together. */
export interface WorkAhead {
  readonly minutes: number;
  /** Days with at least one job. */
  readonly days: number;
  readonly longest: { readonly on: IsoDay; readonly minutes: number };
  readonly materials: readonly string[];
}

/** A timetable that is only being thought of; null when it has no job. */
export interface TimetablePreview extends TimetableView {
  readonly work: WorkAhead | null;
}

export type CalendarFactView =
  | { readonly kind: 'step'; readonly step: Step; readonly on: IsoDay }
  | { readonly kind: 'larva-age'; readonly fromHours: number; readonly toHours: number; readonly on: IsoDay }
  | { readonly kind: 'seen'; readonly id: string; readonly what: ObservationKind; readonly on: IsoDay };
