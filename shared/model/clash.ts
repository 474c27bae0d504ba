import type { Day } from '../kernel/day.ts';
import type { Step } from './step.ts';
import type { Timetable } from './timetable.ts';

/** A batch as far as clashes are concerned. */
export interface PlannedBatch {
  readonly id: string;
  readonly timetable: Timetable;
  readonly builderId: string | null;
  /** Cells expected in the builder: counted where a count was made, else planned; null = not known. */
  readonly cells: number | null;
  readonly barIds: readonly string[];
  /** Boxes the person has chosen for its cells. */
  readonly boxIds: readonly string[];
}

export interface PlannedBox {
  readonly id: string;
  /** First day on which it can take a cell; null = in use without an end in sight. */
  readonly freeFrom: Day | null;
}

/** What the person has said about their days and hives. */
export interface PlanningRules {
  readonly awayDays: ReadonlySet<Day>;
  /** ISO weekdays (1 Monday to 7 Sunday) that suit; empty = every day. */
  readonly workWeekdays: readonly number[];
  readonly cellsPerBuilder: number;
  /** Share of the usual number of cells a builder bears now: 1 in a flow, less in a dearth. */
  readonly seasonFactor: number;
  readonly builderRestDays: number;
  /** First day of mature drones; null = not known, and nothing is said. */
  readonly dronesMatureFrom: Day | null;
}

/** Two things that cannot both go as planned, with the dates and what would resolve it. */
export type Clash =
  | {
      readonly kind: 'builder-busy';
      readonly batch: string;
      readonly other: string;
      readonly builderId: string;
      readonly on: Day;
      /** The other batch's cells leave on this day; resting follows until `freeFrom`. */
      readonly holdsUntil: Day;
      readonly freeFrom: Day;
    }
  | {
      readonly kind: 'too-many-cells';
      readonly batch: string;
      readonly builderId: string;
      readonly cells: number;
      readonly usualMost: number;
      /** Builders that would be needed. */
      readonly builders: number;
    }
  | {
      readonly kind: 'too-few-boxes';
      readonly on: Day;
      readonly batches: readonly string[];
      readonly cells: number;
      readonly freeBoxes: number;
      /** Last day on which all these cells can still be placed, and boxes free by then. */
      readonly deadline: Day;
      readonly freeByDeadline: number;
    }
  | {
      readonly kind: 'box-not-free';
      readonly batch: string;
      readonly boxId: string;
      readonly on: Day;
      readonly freeFrom: Day | null;
    }
  | {
      readonly kind: 'ages-mixed-on-bar';
      readonly barId: string;
      readonly batch: string;
      readonly other: string;
      readonly on: Day;
      readonly otherOn: Day;
    }
  | {
      readonly kind: 'must-step-away';
      readonly batch: string;
      readonly step: Step;
      readonly on: Day;
      readonly reason: 'away' | 'weekday';
      /** Days inside the step's window on which the person is there. */
      readonly suits: readonly Day[];
    }
  | {
      readonly kind: 'no-drones-yet';
      readonly batch: string;
      readonly fliesFrom: Day;
      readonly dronesMatureFrom: Day;
      /** Days by which the batch would have to start later. */
      readonly daysLater: number;
    };

/** Why a start day fails. */
export type StartTrouble =
  | { readonly kind: 'must-step-away'; readonly step: Step; readonly on: Day }
  | { readonly kind: 'starts-in-past'; readonly step: Step; readonly on: Day }
  | { readonly kind: 'builder-taken'; readonly batch: string; readonly until: Day }
  | { readonly kind: 'too-few-boxes'; readonly on: Day; readonly cells: number; readonly freeBoxes: number }
  | { readonly kind: 'no-drones-yet'; readonly fliesFrom: Day; readonly dronesMatureFrom: Day };

export interface StartDay {
  readonly on: Day;
  /** Empty for a good day. */
  readonly troubles: readonly StartTrouble[];
  /** Must-steps that have to be done on another day of their window than the expected one. */
  readonly shiftedSteps: readonly Step[];
  /** 1 = best; null for a day that fails. */
  readonly rank: number | null;
}
