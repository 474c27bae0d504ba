import { MATING_DAYS } from '../../shared/biology/flight-weather.ts';
import type { FlightView } from '../../shared/contract/weather.ts';
import { addDays, type Day, earlierOf, isoOfDay } from '../../shared/kernel/day.ts';
import type { Timetable } from '../../shared/model/timetable.ts';
import { type FlightRating, flightWeather } from '../../shared/model/weather.ts';
import { flightRecord, lateDays } from '../engine/calendar/flight-record.ts';
import type { Tables } from '../workbook/workbook.ts';

/** Days of mating flights of one batch until today; null before the first, and for a batch without boxes. */
export function flightView(tables: Tables, batchId: string, timetable: Timetable, today: Day): FlightView | null {
  const out = timetable.emergence.expected;
  const from = addDays(out, MATING_DAYS.flightsFrom.value);
  if (today < from || tables.placements.where({ batchId }).length === 0) return null;
  const until = addDays(out, MATING_DAYS.lateWarning.value);
  const log = tables.weather.between(isoOfDay(from), isoOfDay(until)).map(flightWeather);
  const days: Record<FlightRating, number> = { good: 0, possible: 0, poor: 0, unknown: 0 };
  for (const { rating } of flightRecord(log, from, earlierOf(today, until))) days[rating] += 1;
  const late = lateDays(out, log);
  return {
    from: isoOfDay(from),
    to: isoOfDay(addDays(out, MATING_DAYS.flightsTo.value)),
    days,
    putOffDays: late.warningOn - until,
    lateOn: isoOfDay(late.warningOn),
  };
}

/** Whether the queens of a batch may still fly to mate: from the first normal flights to the giving up. */
export function isFlying({ emergence, steps }: Timetable, today: Day): boolean {
  const last = steps.find(({ step }) => step === 'give-up')?.latest ?? emergence.latest;
  return today >= addDays(emergence.expected, MATING_DAYS.flightsFrom.value) && today <= last;
}
