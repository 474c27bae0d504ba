import type { DayWeather, FlightRating } from '../model/weather.ts';
import type { Fact } from './fact.ts';
import {
  BEEBOOK_MATING_BOXES,
  BEEBOOK_MATING_PLACE,
  CUSTOM,
  FLIGHT_PRACTICE,
  GIVE_UP,
  MATING_FLIGHTS,
} from './sources.ts';

/** Weather and days of mating flights. */
export const FLIGHT_LIMITS = {
  goodAboveCelsius: { value: 20, unit: 'celsius', range: [20, 20.6], source: BEEBOOK_MATING_PLACE, confidence: 'high' },
  possibleFromCelsius: { value: 18, unit: 'celsius', range: [16, 19], source: FLIGHT_PRACTICE, confidence: 'high' },
  mostWind: { value: 24, unit: 'kilometres per hour', range: null, source: BEEBOOK_MATING_PLACE, confidence: 'medium' },
  hoursFrom: { value: 11, unit: 'hour of day', range: [10, 11], source: BEEBOOK_MATING_BOXES, confidence: 'high' },
  hoursTo: { value: 16, unit: 'hour of day', range: [16, 17], source: BEEBOOK_MATING_BOXES, confidence: 'high' },
} as const satisfies Record<string, Fact>;

/** Days after emergence. */
export const MATING_DAYS = {
  /** Mating flights are normal from day 5 to day 14. */
  flightsFrom: { value: 5, unit: 'days', range: [5, 6], source: MATING_FLIGHTS, confidence: 'high' },
  flightsTo: { value: 14, unit: 'days', range: [10, 21], source: MATING_FLIGHTS, confidence: 'high' },
  lateWarning: { value: 21, unit: 'days', range: null, source: BEEBOOK_MATING_BOXES, confidence: 'high' },
  giveUp: { value: 28, unit: 'days', range: [28, 35], source: GIVE_UP, confidence: 'medium' },
  /** No weather puts the late warning off beyond this. */
  warningNeverAfter: { value: 30, unit: 'days', range: null, source: CUSTOM, confidence: 'low' },
} as const satisfies Record<string, Fact>;

/**
 * Whether young queens could fly out to mate. Good: above 20 °C, at most 24 km/h of wind, sun. Possible: from 18 °C, or
 * with something unknown or no sun on a warm day. Poor: colder, or more wind.
 */
export function rateFlightDay({ maxCelsius, windKmh, sun }: DayWeather): FlightRating {
  if (maxCelsius === null) return 'unknown';
  if (maxCelsius < FLIGHT_LIMITS.possibleFromCelsius.value) return 'poor';
  if (windKmh !== null && windKmh > FLIGHT_LIMITS.mostWind.value) return 'poor';
  const isWarm = maxCelsius > FLIGHT_LIMITS.goodAboveCelsius.value;
  if (sun === false) return isWarm ? 'possible' : 'poor';
  return isWarm && windKmh !== null && sun === true ? 'good' : 'possible';
}
