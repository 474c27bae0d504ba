import {
  type DayWeather,
  type FlightRating,
  MATING_DAYS,
  rateFlightDay,
} from '../../../shared/biology/flight-weather.ts';
import { addDays, type Day, earlierOf } from '../../../shared/kernel/day.ts';

export interface LoggedWeather extends DayWeather {
  readonly on: Day;
}

export interface RatedDay {
  readonly on: Day;
  readonly rating: FlightRating;
}

/** Each day from `from` to `to` with its rating; days without a note are unknown, never poor. The last note of a day counts. */
export function flightRecord(log: readonly LoggedWeather[], from: Day, to: Day): readonly RatedDay[] {
  const weatherByDay = new Map(log.map((weather) => [weather.on, weather]));
  const days: RatedDay[] = [];
  for (let on = from; on <= to; on = addDays(on, 1)) {
    const weather = weatherByDay.get(on);
    days.push({ on, rating: weather ? rateFlightDay(weather) : 'unknown' });
  }
  return days;
}

export interface LateWarning {
  readonly on: Day;
  /** Poor days between day 5 and day 21 after emergence, which put the warning off. */
  readonly unflyableDays: number;
}

/** The late warning of queens emerged on a day: 21 days after, put off by unflyable days, never past 30 days. */
export function lateWarning(emergedOn: Day, log: readonly LoggedWeather[]): LateWarning {
  const usual = addDays(emergedOn, MATING_DAYS.lateWarning.value);
  const days = flightRecord(log, addDays(emergedOn, MATING_DAYS.flightsFrom.value), usual);
  const unflyableDays = days.filter((day) => day.rating === 'poor').length;
  const never = addDays(emergedOn, MATING_DAYS.warningNeverAfter.value);
  return { on: earlierOf(addDays(usual, unflyableDays), never), unflyableDays };
}
