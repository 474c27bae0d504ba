import {
  WHOLE_FORMAT,
  WHOLE_TABLES,
  WHOLE_VERSION,
  type WholeWorkbook,
} from '../../../shared/contract/whole-workbook.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { MARKS } from '../../workbook/file-marks.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { HELD_AT, PRINTED_PAPERS, WRITER } from '../workbook-marks.ts';

/** A new table that is not named in the file of everything does not compile. */
type TableKeys = Exclude<keyof Tables, 'tallies' | 'seasonSums' | 'settings'>;
export const WHOLE_KEYS = Object.keys(WHOLE_TABLES) as readonly TableKeys[];
WHOLE_TABLES satisfies Readonly<Record<TableKeys, unknown>>;

/**
 * What belongs to the file, not to what is in it: what says which file it is, who is typing at it, and which of its papers
 * were printed after which of its own steps.
 */
const OWN_MARKS: ReadonlySet<string> = new Set([...Object.values(MARKS), HELD_AT, WRITER, PRINTED_PAPERS]);

export const isOwnMark = (key: string): boolean => OWN_MARKS.has(key);

/** Everything the person has typed, as plain data. */
export function wholeWorkbook({ workbook, today }: Desk): WholeWorkbook {
  const { tables } = workbook;
  const rows = Object.fromEntries(WHOLE_KEYS.map((key) => [key, tables[key].all()]));
  const settings = Object.entries(tables.settings.all()).filter(([key]) => !isOwnMark(key));
  return {
    format: WHOLE_FORMAT,
    version: WHOLE_VERSION,
    name: workbook.name,
    exportedOn: isoOfDay(today),
    tables: { ...rows, tallies: tables.tallies.all() } as WholeWorkbook['tables'],
    settings: Object.fromEntries(settings) as WholeWorkbook['settings'],
  };
}
