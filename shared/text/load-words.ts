import type { Language } from '../kernel/language.ts';
import { english, type Words } from './english/english.ts';
import { laidOver } from './translation.ts';

/** The words of a language for the window. English is there at once and stands in for what another one lacks. */
export async function loadWords(language: Language): Promise<Words> {
  if (language === 'en') return english;
  const { german } = await import('./german/german.ts');
  return laidOver<Words>(english, german);
}
