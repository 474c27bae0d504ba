import type { PaperFile } from '../../shared/contract/print.ts';
import { isoOfDay } from '../../shared/kernel/day.ts';
import { fullDay } from '../../shared/text/day-text.ts';
import type { FlowingChoice } from '../paper/flowing-paper.ts';
import type { Desk } from './operation.ts';
import { storedSettings } from './stored-settings.ts';
import { workbookWords } from './workbook-words.ts';

/** What stands at the foot of a paper made from the workbook: its name, the day, and the last change that is in it. */
export function paperFoot(desk: Desk): Pick<FlowingChoice, 'foot' | 'page' | 'madeAt' | 'language'> {
  const { workbook, today } = desk;
  const { seasonReport: words, language } = workbookWords(desk);
  const { dateOrder } = storedSettings(workbook.tables.settings);
  return {
    foot: words.foot(workbook.name, fullDay(today, dateOrder, language), workbook.changeNumber),
    page: words.page,
    language,
    madeAt: `${isoOfDay(today)}T12:00:00Z`,
  };
}

export const paperFile = (name: string, { bytes, pages }: { bytes: Buffer; pages: number }): PaperFile => ({
  name,
  mediaType: 'application/pdf',
  base64: bytes.toString('base64'),
  pages,
});
