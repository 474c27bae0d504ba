import { rateFlightDay } from '../../../shared/biology/flight-weather.ts';
import type { WeatherLine, WeatherLog } from '../../../shared/contract/weather.ts';
import { addDays, isoOfDay, yearOfDay } from '../../../shared/kernel/day.ts';
import { flightWeather, type WeatherDay } from '../../../shared/model/weather.ts';
import { flightView, isFlying } from '../flight-view.ts';
import { runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';

/** Every day of so many last days is offered to be noted. */
const OFFERED_DAYS = 14;

/** The weather log of this year, and the batches whose queens fly now. */
export function listWeather({ workbook: { tables }, today }: Desk): WeatherLog {
  const offered = Array.from({ length: OFFERED_DAYS }, (_, index) => isoOfDay(addDays(today, -index)));
  const noted = tables.weather.between(`${yearOfDay(today)}-01-01`, `${yearOfDay(today)}-12-31`);
  const byDay = new Map(noted.map((weather) => [weather.day, weather]));
  const days = [...new Set([...offered, ...byDay.keys()])].toSorted().toReversed();
  return {
    days: days.map((day) => lineOf(byDay.get(day) ?? { ...NOT_NOTED, id: day, day })),
    flying: runningBatches(tables, today)
      .filter(({ timetable }) => isFlying(timetable, today))
      .flatMap(({ batch, timetable }) => {
        const flight = flightView(tables, batch.id, timetable, today);
        return flight ? [{ batchId: batch.id, batch: batch.code, flight }] : [];
      }),
  };
}

const NOT_NOTED = { maxCelsius: null, windKmh: null, rain: null, flyingHours: null };

const lineOf = ({ id: _, ...weather }: WeatherDay): WeatherLine => ({
  ...weather,
  rating: rateFlightDay(flightWeather(weather)),
});
