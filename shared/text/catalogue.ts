import type { Language } from '../kernel/language.ts';
import { english, type Words } from './english/english.ts';
import { HEADING_GUESSES } from './english/tables-in.ts';
import { german } from './german/german.ts';
import { GERMAN_HEADING_GUESSES } from './german/heading-guesses.ts';
import { laidOver } from './translation.ts';

/** The words of every language, for papers and files. The window loads only the language it shows (load-words.ts). */
const CATALOGUE: Readonly<Record<Language, Words>> = { en: english, de: laidOver<Words>(english, german) };

export const wordsOf = (language: Language): Words => CATALOGUE[language];

/** Headings of tables as people write them; a file may be in another language than the page. */
export const GUESSES = [HEADING_GUESSES, GERMAN_HEADING_GUESSES] as const;
