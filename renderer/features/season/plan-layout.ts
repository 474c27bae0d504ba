import type { BatchLine } from '../../../shared/contract/batches.ts';
import type { PlanWeek, SeasonPlan } from '../../../shared/contract/season-plan.ts';
import { addDays, dayOfIso, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import type { StripAxis } from '../../charts/SeasonStrip.tsx';

const WEEK_DAYS = 7;

export const axisOf = (weeks: readonly PlanWeek[]): StripAxis | null => {
  const [first] = weeks;
  return first ? { from: first.from, days: weeks.length * WEEK_DAYS } : null;
};

/** Batches that are not over, by the day of their larvae. */
export const openLines = (batches: readonly BatchLine[]): readonly BatchLine[] =>
  batches.filter((line) => line.state !== 'closed').toSorted((a, b) => (a.larvaeGivenOn < b.larvaeGivenOn ? -1 : 1));

export const lastDayOf = (week: PlanWeek): IsoDay => isoOfDay(addDays(dayOfIso(week.from), WEEK_DAYS - 1));

export const awayIn = (week: PlanWeek, awayDays: SeasonPlan['awayDays']): number =>
  awayDays.filter((day) => week.from <= day && day <= lastDayOf(week)).length;

export type DronesIn = 'none' | 'all-week' | { readonly from: IsoDay };

/** Whether mature drones fly in a week: not yet, from one of its days, or all through it. */
export function dronesIn(week: PlanWeek, matureFrom: IsoDay): DronesIn {
  if (matureFrom <= week.from) return 'all-week';
  return matureFrom <= lastDayOf(week) ? { from: matureFrom } : 'none';
}
