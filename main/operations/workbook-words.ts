import { languageOf } from '../../shared/kernel/language.ts';
import { wordsOf } from '../../shared/text/catalogue.ts';
import type { Words } from '../../shared/text/english/english.ts';
import type { Desk } from './operation.ts';
import { storedSettings } from './stored-settings.ts';

/** The words of the language in which the person reads this workbook, for papers and files. */
export const workbookWords = ({ workbook, computerLanguage }: Pick<Desk, 'workbook' | 'computerLanguage'>): Words =>
  wordsOf(languageOf(storedSettings(workbook.tables.settings).language, computerLanguage));
