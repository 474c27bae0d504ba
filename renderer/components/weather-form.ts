import type { WeatherLine } from '../../shared/contract/weather.ts';
import { celsiusText, parseDegrees, type TemperatureUnit } from '../../shared/text/degrees.ts';

/** One day's row as typed. */
export interface TypedWeather {
  readonly maxCelsius: string;
  readonly windKmh: string;
  readonly rain: 'unknown' | 'yes' | 'no';
  readonly flyingHours: string;
}
export type WeatherField = Exclude<keyof TypedWeather, 'rain'>;
type Noted = Omit<WeatherLine, 'rating' | 'day'>;

export const typedWeather = (
  { maxCelsius, windKmh, rain, flyingHours }: Noted,
  unit: TemperatureUnit,
): TypedWeather => ({
  maxCelsius: maxCelsius === null ? '' : celsiusText(maxCelsius, unit).replace(/ .*$/, ''),
  windKmh: windKmh === null ? '' : String(windKmh),
  rain: rain === null ? 'unknown' : rain ? 'yes' : 'no',
  flyingHours: flyingHours === null ? '' : String(flyingHours),
});

/** A number from 0 up to `most`; null for an empty field, undefined for what is no such number. */
function upTo(text: string, most: number): number | null | undefined {
  if (text.trim() === '') return null;
  const number = /^\s*\d{1,3}([.,]\d+)?\s*$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
  return number <= most ? number : undefined;
}

const MOST_WIND = 200;
const MOST_HOURS = 5;
const DEGREES = { least: -40, most: 55 };

function degrees(text: string, unit: TemperatureUnit): number | null | undefined {
  if (text.trim() === '') return null;
  const celsius = parseDegrees(text, unit);
  return celsius !== null && celsius >= DEGREES.least && celsius <= DEGREES.most ? celsius : undefined;
}

/** What the row says, or the first field that cannot be read. */
export function readWeather(typed: TypedWeather, unit: TemperatureUnit): Noted | WeatherField {
  const maxCelsius = degrees(typed.maxCelsius, unit);
  if (maxCelsius === undefined) return 'maxCelsius';
  const windKmh = upTo(typed.windKmh, MOST_WIND);
  if (windKmh === undefined) return 'windKmh';
  const flyingHours = upTo(typed.flyingHours, MOST_HOURS);
  if (flyingHours === undefined) return 'flyingHours';
  return { maxCelsius, windKmh, rain: typed.rain === 'unknown' ? null : typed.rain === 'yes', flyingHours };
}
