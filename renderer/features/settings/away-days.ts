import { addDays, dayOfIso, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';

/** First and last day of one stay away. */
export interface AwaySpan {
  readonly from: IsoDay;
  readonly to: IsoDay;
}

/** No stay away is longer; a year typed wrong would otherwise fill the setting. */
export const MOST_AWAY_DAYS = 100;

/** Days that follow one another, as spans, earliest first. */
export function awaySpans(days: readonly IsoDay[]): readonly AwaySpan[] {
  const spans: AwaySpan[] = [];
  for (const day of [...new Set(days)].toSorted()) {
    const last = spans.at(-1);
    if (last && addDays(dayOfIso(last.to), 1) === dayOfIso(day)) spans[spans.length - 1] = { ...last, to: day };
    else spans.push({ from: day, to: day });
  }
  return spans;
}

/** The days with a span added; a span typed the wrong way round is turned. Null when it is longer than any stay. */
export function withSpan(days: readonly IsoDay[], { from, to }: AwaySpan): readonly IsoDay[] | null {
  const [first, last] = [dayOfIso(from), dayOfIso(to)].toSorted((a, b) => a - b);
  if (first === undefined || last === undefined || last - first >= MOST_AWAY_DAYS) return null;
  const added = Array.from({ length: last - first + 1 }, (_, index) => isoOfDay(addDays(first, index)));
  return [...new Set([...days, ...added])].toSorted();
}

export const withoutSpan = (days: readonly IsoDay[], { from, to }: AwaySpan): readonly IsoDay[] =>
  days.filter((day) => day < from || day > to);
