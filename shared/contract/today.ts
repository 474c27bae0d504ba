import type { IsoDay } from '../kernel/day.ts';
import type { Hardness, Step, TimeOfDay } from '../model/step.ts';

/** One job of the day. Its words come from shared/text by step. */
export interface Job {
  readonly batchId: string;
  readonly batch: string;
  readonly step: Step;
  /** What the person's own copy of the method calls the step; null = as built in. */
  readonly ownTitle: string | null;
  readonly where:
    | { readonly kind: 'hive'; readonly id: string; readonly code: string }
    | { readonly kind: 'boxes'; readonly codes: readonly string[] }
    | { readonly kind: 'unknown' };
  /** All yards it is done in, in walking order. */
  readonly yard: string | null;
  readonly earliest: IsoDay;
  readonly expected: IsoDay;
  readonly latest: IsoDay;
  readonly daysAfterLarvae: number;
  readonly timeOfDay: TimeOfDay;
  readonly hardness: Hardness;
  readonly minutes: number | null;
  readonly materials: readonly string[];
  /** Biology allows to leave it out. */
  readonly canBeDropped: boolean;
  /** What pressing Enter on it opens. */
  readonly opens: 'counts' | 'place-cells' | 'looks' | 'mark';
  /** The same hive or boxes are hands off today because of another batch; the two free days nearest to it. */
  readonly clash: { readonly batch: string; readonly alternatives: readonly IsoDay[] } | null;
}

export interface LeaveAlone {
  readonly what: string;
  /** The hive; null where it is boxes. */
  readonly hiveId: string | null;
  /** Codes of the boxes; none where it is a hive. */
  readonly boxes: readonly string[];
  readonly batchId: string;
  readonly yard: string | null;
  readonly step: Step;
  readonly batch: string;
  readonly until: IsoDay;
  /** Only in these hours ("11 to 16"), or all day when null. */
  readonly hours: { readonly from: number; readonly to: number } | null;
}

/** The jobs of one day, the minutes they take by plan, and what to bring. */
export interface WorkDay {
  readonly on: IsoDay;
  readonly minutes: number;
  readonly materials: readonly { readonly material: string; readonly jobs: number }[];
  readonly jobs: readonly { readonly batchId: string; readonly batch: string; readonly step: Step }[];
}

/** A hive to which a queen was brought: left alone until the next check of her. */
export interface QuietHive {
  readonly id: string;
  readonly code: string;
  readonly yard: string | null;
  readonly queen: string;
  readonly until: IsoDay;
}

export interface TodayView {
  readonly today: IsoDay;
  readonly due: readonly Job[];
  readonly late: readonly Job[];
  readonly early: readonly Job[];
  readonly tomorrow: readonly Job[];
  readonly leaveAlone: readonly LeaveAlone[];
  readonly quietHives: readonly QuietHive[];
  readonly bring: readonly { readonly material: string; readonly jobs: number }[];
  readonly minutesToday: number;
  /** Work of today and the six days after it; days without jobs are left out. */
  readonly week: readonly WorkDay[];
  readonly anyBatch: boolean;
}
