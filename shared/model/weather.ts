import { z } from 'zod';
import { type Day, dayOfIso } from '../kernel/day.ts';
import { IdField, IsoDayField } from './fields.ts';

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

/** How a day was for mating flights; `unknown` where too little was noted. */
export const FLIGHT_RATINGS = ['good', 'possible', 'poor', 'unknown'] as const;
export type FlightRating = (typeof FLIGHT_RATINGS)[number];

/** One day's flight weather as noted; null = not noted. */
export const WeatherDay = z.object({
  id: IdField,
  day: IsoDayField,
  /** Highest temperature of the day. */
  maxCelsius: z.number().min(-40).max(55).nullable(),
  windKmh: z.number().min(0).max(200).nullable(),
  /** Whether it rained at flying time. */
  rain: z.boolean().nullable(),
  /** Hours between 11 and 16 in which bees flew well: sun, warmth, little wind. */
  flyingHours: z.number().min(0).max(5).nullable(),
});
export type WeatherDay = z.infer<typeof WeatherDay>;

/** A noted day as flights are rated by it: an hour of good flying is sun enough; rain without such an hour is none. */
export const flightWeather = ({
  day,
  maxCelsius,
  windKmh,
  rain,
  flyingHours,
}: Omit<WeatherDay, 'id'>): LoggedWeather => ({
  on: dayOfIso(day),
  maxCelsius,
  windKmh,
  sun: flyingHours === null ? (rain === true ? false : null) : flyingHours >= 1,
});
