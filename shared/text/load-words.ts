import type { Language } from '../kernel/language.ts';
import type { Words } from './english/english.ts';
import { type FirstWords, firstWords } from './english/first-words.ts';
import { laidOver } from './translation.ts';

/** The first words of a language for the window. The English ones are there at once and stand in for missing ones. */
export async function loadFirstWords(language: Language): Promise<FirstWords> {
  if (language === 'en') return firstWords;
  const german = await import('./german/first-words.ts');
  return laidOver<FirstWords>(firstWords, german.firstWords);
}

const coming = new Map<Language, Promise<Words>>();
const here = new Map<Language, Words>();

/** All words of a language that were loaded before; null as long as they are not here. */
export const wordsHere = (language: Language): Words | null => here.get(language) ?? null;

/** Loads all words of a language, once; after a failure the next call tries again. */
export function loadWords(language: Language): Promise<Words> {
  const asked = coming.get(language);
  if (asked) return asked;
  const words = fetched(language);
  coming.set(language, words);
  words.then(
    (all) => here.set(language, all),
    () => coming.delete(language),
  );
  return words;
}

async function fetched(language: Language): Promise<Words> {
  if (language === 'en') return (await import('./english/english.ts')).english;
  const [{ english }, { german }] = await Promise.all([import('./english/english.ts'), import('./german/german.ts')]);
  return laidOver<Words>(english, german);
}
