import { type Language, languageOf } from '../../shared/kernel/language.ts';
import { wordsOf } from '../../shared/text/catalogue.ts';
import type { Words } from '../../shared/text/english/english.ts';
import type { Desk } from './operation.ts';
import { storedSettings } from './stored-settings.ts';

type Reader = Pick<Desk, 'workbook' | 'computerLanguage'>;

/** The language in which the person reads this workbook. */
export const workbookLanguage = ({ workbook, computerLanguage }: Reader): Language =>
  languageOf(storedSettings(workbook.tables.settings).language, computerLanguage);

/** Its words, for papers and files. */
export const workbookWords = (reader: Reader): Words => wordsOf(workbookLanguage(reader));
