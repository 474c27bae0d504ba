import type { Day } from '../kernel/day.ts';

/** One day's weather as typed or read from a table; null = not known. */
export interface DayWeather {
  readonly maxCelsius: number | null;
  readonly windKmh: number | null;
  /** True when the sun shone for an hour or two at flying time. */
  readonly sun: boolean | null;
}

export interface LoggedWeather extends DayWeather {
  readonly on: Day;
}
