import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { IdField } from '../model/fields.ts';
import { Wish } from '../model/wish.ts';

/** The same id again corrects the wish. */
export const SaveWish = Wish;
export const RemoveWish = z.object({ wishId: IdField });

export interface WishLine extends Wish {
  /** Queens given or sold to that name in that year; null = nobody is named, so nothing can be reckoned. */
  readonly handedOver: number | null;
  /** Queens still owed; 0 once it is settled. */
  readonly open: number;
}

/** Most that is in use at once in a week, of how many there are. */
export interface WeekLoad {
  readonly most: number;
  readonly of: number;
}

export interface PlanWeek {
  readonly from: IsoDay;
  readonly builders: WeekLoad;
  readonly boxes: WeekLoad;
  /** Queens still owed by the end of this week, earlier weeks counted in. */
  readonly wanted: number;
}

export interface SeasonPlan {
  /** Whole weeks from the first day of a batch that is not over to the last, or to the last wish; empty without both. */
  readonly weeks: readonly PlanWeek[];
  readonly wishes: readonly WishLine[];
  /** Queens seen laying or proved that are still in their boxes. */
  readonly laying: number;
  readonly proved: number;
  readonly awayDays: readonly IsoDay[];
  /** First day of mature drones; null = not known. */
  readonly dronesMatureFrom: IsoDay | null;
}

/** Proved queens that may still come from all batches that run or are planned, practice left out. */
export interface QueensToCome {
  /** null = no batch of which anything can be said. About 9 times in 10 between lower and upper. */
  readonly proved: { readonly mean: number; readonly lower: number; readonly upper: number } | null;
  /** How many batches that rests on. */
  readonly batches: number;
  /** Neither counted nor planned in cells. */
  readonly notReckoned: readonly { readonly id: string; readonly code: string }[];
}

export type WishRefusal = { readonly kind: 'wish-missing'; readonly field: 'wishId' };
