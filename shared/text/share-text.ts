import type { Language } from '../kernel/language.ts';

/** A share as whole per cent: 0.733 is "73 %". A no-break space keeps number and sign together on one line. */
export const perCent = (share: number): string => `${Math.round(share * 100)}\u00a0%`;

/** "60–82 %" */
export const perCentRange = (lower: number, upper: number): string =>
  `${Math.round(lower * 100)}–${Math.round(upper * 100)}\u00a0%`;

/** Whole numbers plain, others to one decimal. */
export const amount = (value: number, language: Language = 'en'): string =>
  inLanguage(Number.isInteger(value) ? String(value) : value.toFixed(1), language);

/** A number written with a point, as the language writes it: German has a comma there. */
export const inLanguage = (digits: string, language: Language): string =>
  language === 'de' ? digits.replace('.', ',') : digits;
