import type { Language } from '../kernel/language.ts';
import { inLanguage } from './share-text.ts';

/** Temperatures are kept in degrees Celsius and read in the unit the person chose. */
export type TemperatureUnit = 'celsius' | 'fahrenheit';

/** Exact by definition: 0 °C is 32 °F, and a degree Celsius is 1.8 degrees Fahrenheit (NIST SP 811, B.8). */
export const fahrenheitOfCelsius = (celsius: number): number => celsius * 1.8 + 32;
export const celsiusOfFahrenheit = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

/** "34.5 °C" or "94.1 °F", to a tenth of a degree, with a true minus sign. */
export function celsiusText(celsius: number, unit: TemperatureUnit = 'celsius', language: Language = 'en'): string {
  const degrees = unit === 'celsius' ? celsius : fahrenheitOfCelsius(celsius);
  const rounded = Math.round(degrees * 10) / 10;
  return `${rounded < 0 ? '−' : ''}${inLanguage(String(Math.abs(rounded)), language)} ${unit === 'celsius' ? '°C' : '°F'}`;
}

/**
 * Reads a typed temperature into degrees Celsius. A unit typed with it ("94 F", "34.5°C") wins over the one chosen;
 * a comma is as good as a point. null when it is no temperature.
 */
export function parseDegrees(text: string, unit: TemperatureUnit): number | null {
  const parts = /^\s*([-−]?\d{1,3}(?:[.,]\d{1,3})?)\s*°?\s*([cf])?\s*$/i.exec(text);
  if (!parts) return null;
  const degrees = Number((parts[1] ?? '').replace('−', '-').replace(',', '.'));
  const typedIn = parts[2] ? (parts[2].toLowerCase() === 'f' ? 'fahrenheit' : 'celsius') : unit;
  return typedIn === 'celsius' ? degrees : celsiusOfFahrenheit(degrees);
}
