import type { Day } from '../kernel/day.ts';
import type { Step } from './step.ts';
import type { Timetable } from './timetable.ts';

/** A batch as far as clashes are concerned. */
export interface PlannedBatch {
  readonly id: string;
  readonly timetable: Timetable;
  readonly builderId: string | null;
  readonly breederId: string | null;
  /** Cells expected in the builder: counted where a count was made, else planned; null = not known. */
  readonly cells: number | null;
  readonly barIds: readonly string[];
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

/** Two things that cannot both go as planned, with the dates and what would resolve it. `On` = how days are written. */
export type ClashOf<On> =
  | {
      readonly kind: 'builder-busy';
      readonly batch: string;
      readonly other: string;
      readonly builderId: string;
      readonly on: On;
      /** The other batch's cells leave on this day; resting follows until `freeFrom`. */
      readonly holdsUntil: On;
      readonly freeFrom: On;
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
      readonly on: On;
      readonly batches: readonly string[];
      readonly cells: number;
      readonly freeBoxes: number;
      /** Last day on which all these cells can still be placed, and boxes free by then. */
      readonly deadline: On;
      readonly freeByDeadline: number;
      /** Boxes in the workbook, free or not. */
      readonly boxes: number;
    }
  | {
      readonly kind: 'ages-mixed-on-bar';
      readonly barId: string;
      readonly batch: string;
      readonly other: string;
      readonly on: On;
      readonly otherOn: On;
    }
  | {
      readonly kind: 'must-step-away';
      readonly batch: string;
      readonly step: Step;
      readonly on: On;
      readonly reason: 'away' | 'weekday';
      /** Days inside the step's window on which the person is there. */
      readonly suits: readonly On[];
    }
  | {
      readonly kind: 'job-in-hands-off';
      readonly batch: string;
      /** The batch whose cells the hive builds. */
      readonly other: string;
      readonly hiveId: string;
      readonly step: Step;
      readonly on: On;
      /** Last day on which the hive is to be left alone. */
      readonly until: On;
      /** The free days nearest to it, the nearer first. */
      readonly alternatives: readonly On[];
    }
  | {
      readonly kind: 'no-drones-yet';
      readonly batch: string;
      readonly fliesFrom: On;
      readonly dronesMatureFrom: On;
      /** Days by which the batch would have to start later. */
      readonly daysLater: number;
    };

export type Clash = ClashOf<Day>;

/** Why a start day fails. */
export type StartTroubleOf<On> =
  | { readonly kind: 'must-step-away'; readonly step: Step; readonly on: On }
  | { readonly kind: 'starts-in-past'; readonly step: Step; readonly on: On }
  | { readonly kind: 'builder-taken'; readonly batch: string; readonly until: On }
  | { readonly kind: 'too-few-boxes'; readonly on: On; readonly cells: number; readonly freeBoxes: number }
  | { readonly kind: 'no-drones-yet'; readonly fliesFrom: On; readonly dronesMatureFrom: On };

export type StartTrouble = StartTroubleOf<Day>;

export interface StartDayOf<On> {
  readonly on: On;
  /** Empty for a good day. */
  readonly troubles: readonly StartTroubleOf<On>[];
  /** Must-steps that have to be done on another day of their window than the expected one. */
  readonly shiftedSteps: readonly Step[];
  /** 1 = best; null for a day that fails. */
  readonly rank: number | null;
}

export type StartDay = StartDayOf<Day>;
