import type { Language } from '../kernel/language.ts';
import { english, type Words } from './english/english.ts';
import { HEADING_GUESSES } from './english/tables-in.ts';
import { german } from './german/german.ts';
import { GERMAN_HEADING_GUESSES } from './german/heading-guesses.ts';
import { laidOver } from './translation.ts';

/** The words of every language, each put together when it is first asked for. */
const made: Partial<Record<Language, Words>> = { en: english };

/** For papers, files and menus. The window loads only the language it shows (load-words.ts). */
export function wordsOf(language: Language): Words {
  made[language] ??= laidOver<Words>(english, german);
  return made[language];
}

/** Headings of tables as people write them; a file may be in another language than the page. */
export const GUESSES = [HEADING_GUESSES, GERMAN_HEADING_GUESSES] as const;
