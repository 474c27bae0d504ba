import type { Day } from '../kernel/day.ts';
import type { BoxType, BuilderType, Comb, Method } from './method.ts';
import type { DatedStep, HandsOffSpan, ObservationKind, Step } from './step.ts';
import type { LoggedWeather } from './weather.ts';

/** Hours, youngest or least first: [12, 24]. */
export type HourRange = readonly [number, number];

/** One thing really seen on a batch. `hours` = age or time since the event, for the kinds that have one. */
export interface Seen {
  readonly id: string;
  readonly what: ObservationKind;
  readonly on: Day;
  readonly hours?: HourRange | null;
}

export interface StepDay {
  readonly step: Step;
  readonly on: Day;
}

/** One step's own days in a person's copy of a method, counted from the day the larvae are given. */
export interface StepChange {
  readonly step: Step;
  readonly earliestDay: number;
  readonly expectedDay: number;
  readonly latestDay: number;
}

/** All a timetable is reckoned from. Nothing in it is a forecast. */
export interface CalendarInput {
  readonly method: Method;
  readonly comb: Comb | null;
  readonly builderType: BuilderType;
  readonly boxType: BoxType | null;
  /** The step whose day is known, and that day. */
  readonly anchor: StepDay;
  /** Age of youngest and oldest larva when given, hours since hatching; null = the method's usual span. */
  readonly larvaAgeHours: HourRange | null;
  /** Warmth around the sealed cells; null = in the hive, reckoned as 34.5 °C. */
  readonly sealedStageCelsius: number | null;
  readonly seen: readonly Seen[];
  readonly done: readonly StepDay[];
  /** The person's own choice of day for open jobs. */
  readonly moved: readonly { readonly step: Step; readonly to: Day; readonly reason: string }[];
  /** Jobs the person will not do, and the day that was said. To all other steps they are open as before. */
  readonly dropped?: readonly StepDay[];
  /** What the person's copy of the method changes. */
  readonly changes?: readonly StepChange[];
  /** Weather at the boxes; days on which no queen could fly put the late warning off. */
  readonly weather?: readonly LoggedWeather[];
}

export interface EmergenceWindow {
  /** From the oldest plausible larva, kept warm. Every safety deadline hangs on this day. */
  readonly earliest: Day;
  readonly expected: Day;
  /** From the youngest plausible larva, kept cool. */
  readonly latest: Day;
}

/** A fact a forecast rests on: a step's day, the larvae's age as noted, or a sighting. */
export type CalendarFact =
  | { readonly kind: 'step'; readonly step: Step; readonly on: Day }
  | { readonly kind: 'larva-age'; readonly hours: HourRange; readonly on: Day }
  | { readonly kind: 'seen'; readonly id: string; readonly what: ObservationKind; readonly on: Day };

/** Two facts that cannot both be true. The person says which one holds. */
export interface Contradiction {
  readonly one: CalendarFact;
  readonly other: CalendarFact;
}

export interface Timetable {
  readonly method: Method;
  /** Day 0 of the count; for cells the bees began by themselves, the day a larva would have been given. */
  readonly larvaeGivenOn: Day;
  /** In calendar order. */
  readonly steps: readonly DatedStep[];
  readonly handsOff: readonly HandsOffSpan[];
  readonly emergence: EmergenceWindow;
  /** Last day by whose noon moving cells is safe: earliest plausible emergence less 12 hours. */
  readonly placeDeadline: Day;
  /** The fact that decides the forecast now. */
  readonly reckonedFrom: CalendarFact;
  readonly contradictions: readonly Contradiction[];
}

/** Why no timetable can be reckoned. `field` names the input; sentences are in shared/text/english/calendar-refusals.ts. */
export type CalendarRefusal =
  | { readonly kind: 'method-unknown'; readonly field: 'method'; readonly method: string }
  | {
      readonly kind: 'step-not-in-method';
      readonly field: 'anchor';
      readonly step: Step;
      readonly known: readonly Step[];
    }
  | {
      readonly kind: 'larva-age-turned-round';
      readonly field: 'larvaAgeHours';
      readonly from: number;
      readonly to: number;
    }
  | {
      readonly kind: 'larva-age-impossible';
      readonly field: 'larvaAgeHours';
      readonly hours: number;
      readonly most: number;
    }
  | {
      readonly kind: 'temperature-impossible';
      readonly field: 'sealedStageCelsius';
      readonly celsius: number;
      readonly least: number;
      readonly most: number;
    }
  | {
      readonly kind: 'seen-before-laying';
      readonly field: 'seen';
      readonly id: string;
      readonly what: ObservationKind;
      readonly on: Day;
      readonly laidFrom: Day;
    }
  | { readonly kind: 'seen-needs-hours'; readonly field: 'seen'; readonly id: string; readonly what: ObservationKind }
  | {
      readonly kind: 'seen-hours-turned-round';
      readonly field: 'seen';
      readonly id: string;
      readonly what: ObservationKind;
    }
  | {
      readonly kind: 'done-out-of-order';
      readonly field: 'done';
      readonly step: Step;
      readonly on: Day;
      readonly after: Step;
      readonly afterOn: Day;
    }
  | {
      readonly kind: 'moved-out-of-order';
      readonly field: 'moved';
      readonly step: Step;
      readonly on: Day;
      readonly after: Step;
      readonly afterOn: Day;
    }
  | {
      readonly kind: 'window-turned-round';
      readonly field: 'changes';
      readonly step: Step;
      readonly earliestDay: number;
      readonly expectedDay: number;
      readonly latestDay: number;
    };
