import { MATING_DAYS, rateFlightDay } from '../../../shared/biology/flight-weather.ts';
import { addDays, type Day, earlierOf } from '../../../shared/kernel/day.ts';
import type { FlightRating, LoggedWeather } from '../../../shared/model/weather.ts';

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

export interface LateDays {
  readonly warningOn: Day;
  readonly giveUpOn: Day;
  /** Poor days between day 5 and day 21 after emergence, which put both off. */
  readonly unflyableDays: number;
}

/**
 * When queens emerged on a day are late, and when to give up on them: 21 and 28 days after, both put off by the days on
 * which no queen could fly, never past 30 and 35 days.
 */
export function lateDays(emergedOn: Day, log: readonly LoggedWeather[]): LateDays {
  const after = (days: number): Day => addDays(emergedOn, days);
  const { flightsFrom, lateWarning, warningNeverAfter, giveUp } = MATING_DAYS;
  const waiting = flightRecord(log, after(flightsFrom.value), after(lateWarning.value));
  const unflyableDays = waiting.filter((day) => day.rating === 'poor').length;
  return {
    warningOn: earlierOf(after(lateWarning.value + unflyableDays), after(warningNeverAfter.value)),
    giveUpOn: earlierOf(after(giveUp.value + unflyableDays), after(giveUp.range[1])),
    unflyableDays,
  };
}
