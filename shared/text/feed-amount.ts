import type { Language } from '../kernel/language.ts';
import type { Feeding } from '../model/feeding.ts';
import { inLanguage } from './share-text.ts';

/** Amounts are kept in litres and kilograms and read in the measures the person chose. */
export type Measures = 'metric' | 'us';

type Measure = 'litres' | 'kilograms';
export type FeedAmount = Pick<Feeding, Measure>;

/** Exact by definition (NIST SP 811, B.8): the liquid quart of the United States and the avoirdupois pound. */
const LITRES_IN_QUART = 0.946352946;
const KILOGRAMS_IN_POUND = 0.45359237;

interface Unit {
  readonly measure: Measure;
  /** Litres or kilograms in one of it. */
  readonly holds: number;
}

const UNITS: Readonly<Record<string, Unit>> = {
  l: { measure: 'litres', holds: 1 },
  ml: { measure: 'litres', holds: 0.001 },
  qt: { measure: 'litres', holds: LITRES_IN_QUART },
  gal: { measure: 'litres', holds: 4 * LITRES_IN_QUART },
  kg: { measure: 'kilograms', holds: 1 },
  g: { measure: 'kilograms', holds: 0.001 },
  lb: { measure: 'kilograms', holds: KILOGRAMS_IN_POUND },
  oz: { measure: 'kilograms', holds: KILOGRAMS_IN_POUND / 16 },
};

/** The unit an amount is in when none is typed, and in which it is shown. */
export const unitOf = (measure: Measure, measures: Measures): string =>
  measure === 'litres' ? (measures === 'us' ? 'qt' : 'L') : measures === 'us' ? 'lb' : 'kg';

const UNKNOWN: FeedAmount = { litres: null, kilograms: null };

/**
 * Reads a typed amount: "0.5", "0,5 L", "500 g", "1 qt". A unit typed with it wins over the usual one of the feed. Empty
 * or "?" is an amount that is not known; null when it is no amount. Kept to the millilitre and the gram.
 */
export function parseFeedAmount(text: string, usual: Measure, measures: Measures): FeedAmount | null {
  const typed = text.trim().toLowerCase();
  if (typed === '' || typed === '?') return UNKNOWN;
  const parts = /^(\d{1,6}(?:[.,]\d{1,4})?)\s*([a-z]{1,3})?$/.exec(typed);
  const unit = UNITS[parts?.[2] ?? unitOf(usual, measures).toLowerCase()];
  if (!parts || !unit) return null;
  const amount = Math.round(Number((parts[1] ?? '').replace(',', '.')) * unit.holds * 1000) / 1000;
  return amount > 0 ? { ...UNKNOWN, [unit.measure]: amount } : null;
}

/** A weight in the measures the person reads, and back from what is typed in them; kept to the gram. */
export const weightShown = (kilograms: number, measures: Measures): number =>
  measures === 'us' ? kilograms / KILOGRAMS_IN_POUND : kilograms;
export const kilogramsTyped = (weight: number, measures: Measures): number =>
  measures === 'us' ? Math.round(weight * KILOGRAMS_IN_POUND * 1000) / 1000 : weight;

/** "12.3 kg", "27.1 lb", to one decimal. */
export const weightText = (kilograms: number, measures: Measures, language: Language): string =>
  `${inLanguage(weightShown(kilograms, measures).toFixed(1), language)}\u00a0${unitOf('kilograms', measures)}`;

/** "1.5 L", "300 g", "2 qt"; empty where it is not known. Weights under a kilogram are said in grams. */
export function feedAmountText(
  { litres, kilograms }: FeedAmount,
  measures: Measures = 'metric',
  language: Language = 'en',
): string {
  const said = (amount: number, unit: string) => `${inLanguage(String(amount), language)}\u00a0${unit}`;
  const hundredths = (amount: number) => Math.round(amount * 100) / 100;
  if (litres !== null) return measures === 'us' ? said(hundredths(litres / LITRES_IN_QUART), 'qt') : said(litres, 'L');
  if (kilograms === null) return '';
  if (measures === 'us') return said(hundredths(kilograms / KILOGRAMS_IN_POUND), 'lb');
  return kilograms < 1 ? said(Math.round(kilograms * 1000), 'g') : said(kilograms, 'kg');
}
