import { addDays, type Day, weekdayOfDay } from '../../../shared/kernel/day.ts';
import type { PlanningRules } from '../../../shared/model/clash.ts';

type DayRules = Pick<PlanningRules, 'awayDays' | 'workWeekdays'>;

/** Why a day does not suit the person; null when it does. */
export function dayTrouble(day: Day, { awayDays, workWeekdays }: DayRules): 'away' | 'weekday' | null {
  if (awayDays.has(day)) return 'away';
  return workWeekdays.length > 0 && !workWeekdays.includes(weekdayOfDay(day)) ? 'weekday' : null;
}

/** Days from `earliest` to `latest` that suit. */
export function suitingDays(earliest: Day, latest: Day, rules: DayRules): readonly Day[] {
  const days: Day[] = [];
  for (let day = earliest; day <= latest; day = addDays(day, 1)) if (dayTrouble(day, rules) === null) days.push(day);
  return days;
}
