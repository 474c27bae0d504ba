import type { IsoDay } from '../kernel/day.ts';
import { type FlightRating, WeatherDay } from '../model/weather.ts';

/** One day as typed; a day with nothing in it is taken out. */
export const SaveWeather = WeatherDay.omit({ id: true });

/** One day of the log; noted or not. */
export interface WeatherLine extends Omit<WeatherDay, 'id'> {
  readonly rating: FlightRating;
}

/** The mating flights of one batch, as the weather has let them so far. */
export interface FlightView {
  /** First and last normal flights, 5 to 14 days after the expected emergence. */
  readonly from: IsoDay;
  readonly to: IsoDay;
  /** Days so far, from the first normal flights to today or the late warning. */
  readonly days: Readonly<Record<FlightRating, number>>;
  /** Days by which poor flight days put the late warning off, and the day it falls on now. */
  readonly putOffDays: number;
  readonly lateOn: IsoDay;
}

export interface WeatherLog {
  /** Newest first: every day of the last weeks, and all days of the year that were noted. */
  readonly days: readonly WeatherLine[];
  /** Batches whose queens fly, or wait to, today. */
  readonly flying: readonly { readonly batchId: string; readonly batch: string; readonly flight: FlightView }[];
}
