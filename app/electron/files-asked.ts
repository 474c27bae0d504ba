import { resolve } from 'node:path';
import { BrowserWindow, dialog } from 'electron';
import type { Core } from '../../main/api/core.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Language } from '../../shared/kernel/language.ts';
import { wordsOf } from '../../shared/text/catalogue.ts';
import { shortDay } from '../../shared/text/day-text.ts';
import { refusalSentence } from '../../shared/text/sentences.ts';
import { PAGE_ORIGIN } from './protocol.ts';

const WORKBOOK_ENDING = '.ripecell';
const DATA_SWITCH = '--ripecell-data=';

/** A workbook named on the command line by a double click; anything else there is left alone. */
export function workbookIn(argv: readonly string[], workingFolder = process.cwd()): string | null {
  const named = argv.slice(1).find((word) => word.endsWith(WORKBOOK_ENDING) && !word.startsWith('-'));
  return named === undefined ? null : resolve(workingFolder, named);
}

/** The folder for a trial (`npm start -- --data=FOLDER`), or null for the usual places of the system. */
export function dataFolderIn(argv: readonly string[]): string | null {
  const given = argv.find((word) => word.startsWith(DATA_SWITCH))?.slice(DATA_SWITCH.length);
  return given ? given : null;
}

/**
 * Opens the workbook the system handed over. The page is loaded anew, so that nothing of the workbook open before stays
 * on it; a file that cannot be opened is named, and the workbook open before stays.
 */
export async function openWorkbookFile(core: Core, file: string): Promise<void> {
  const opened = await core.openFile(file);
  if (!opened.ok) return dialog.showErrorBox('Ripecell', sentenceOf(opened.refusal, core.language()));
  await BrowserWindow.getAllWindows()[0]?.loadURL(`${PAGE_ORIGIN}/`);
}

const sentenceOf = (refusal: Refusal, language: Language): string =>
  refusalSentence(wordsOf(language), refusal, (day) => shortDay(day, 'day-first', language));
