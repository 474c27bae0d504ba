/** The languages the program speaks. Another one is a folder beside english and german, and a line here. */
export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

/** What the person chose: a language, or the one the computer has. */
export type LanguageChoice = Language | 'system';

/** The language of a locale such as "de-AT" or "de_CH.UTF-8"; English where it is not spoken here. */
export const languageOfLocale = (locale: string): Language =>
  LANGUAGES.find((language) => language === locale.slice(0, 2).toLowerCase()) ?? 'en';

export const languageOf = (choice: LanguageChoice, ofComputer: Language): Language =>
  choice === 'system' ? ofComputer : choice;
