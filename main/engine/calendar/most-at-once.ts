import type { Day } from '../../../shared/kernel/day.ts';

/** One thing in use from one day to another, both ends included; `to` null = without an end in sight. */
export interface InUse {
  readonly id: string;
  readonly from: Day;
  readonly to: Day | null;
}

const WEEK_DAYS = 7;

/** How many different things are in use at once in each week, on the day with the most. Weeks are named by their first day. */
export const mostAtOnce = (used: readonly InUse[], weeks: readonly Day[]): readonly number[] =>
  weeks.map((week) =>
    Math.max(
      ...Array.from({ length: WEEK_DAYS }, (_, index) => {
        const on = week + index;
        return new Set(used.filter(({ from, to }) => from <= on && (to === null || on <= to)).map(({ id }) => id)).size;
      }),
    ),
  );
