import type { WorkbookKind } from '../../shared/contract/workbook.ts';

/** The ending of a workbook's file name. */
export const WORKBOOK_ENDING = '.ripecell';

/**
 * "RpCl" in ASCII, written into bytes 68 to 71 of the file (SQLite's application_id), so that a workbook can be told
 * from any other SQLite file before a single table is read.
 */
export const APPLICATION_ID = 0x5270436c;

/** Keys of the setting table that say what the file is; the person's own settings have other keys. */
export const MARKS = {
  /** The name the person gave the workbook. */
  name: 'workbookName',
  /** 'real', 'demo' or 'practice'. */
  kind: 'workbookKind',
  /** Number and instant of the last change, rewritten inside each change: the proof that it reached the file. */
  lastChange: 'lastChange',
  /** Version of the program that built a demo or practice workbook. */
  builtBy: 'builtBy',
} as const;

/** What a workbook of invented data is for: to be looked at, or to practise in. */
export type InventedKind = Exclude<WorkbookKind, 'real'>;

/** A file that does not say, or says something unheard of, is somebody's own. */
export const kindOfMark = (mark: unknown): WorkbookKind => (mark === 'demo' || mark === 'practice' ? mark : 'real');
