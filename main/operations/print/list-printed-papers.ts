import type { PrintedPaper } from '../../../shared/contract/papers.ts';
import type { Desk } from '../operation.ts';
import { isChangedSince, nameOfPaper, notedPapers } from './noted-papers.ts';

/** The papers that went to the printer, latest first, each with whether it still says what the workbook says. */
export function listPrintedPapers({ workbook }: Desk): readonly PrintedPaper[] {
  return notedPapers(workbook.tables.settings).flatMap((note): readonly PrintedPaper[] => {
    const name = nameOfPaper(workbook.tables, note.of);
    if (name === null) return [];
    return [{ of: note.of, ...name, printedOn: note.printedOn, changed: isChangedSince(workbook, note) }];
  });
}
