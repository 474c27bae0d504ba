import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { NotedPaper } from '../../../shared/model/noted-paper.ts';
import type { Desk } from '../operation.ts';
import { keepNote, nameOfPaper, queensOf, recordsOf } from './noted-papers.ts';

/**
 * Notes that a paper was saved or opened to be printed, so that it can be called out of date later. Of what is gone
 * meanwhile there is nothing to note.
 */
export function notePaper({ workbook, today }: Desk, of: NotedPaper): Result<null, Refusal> {
  const { journal, tables } = workbook;
  const name = nameOfPaper(tables, of);
  if (name === null) return ok(null);
  const step = journal.steps(null, 1)[0]?.id ?? 0;
  return workbook.change({ did: 'print-paper', ...name }, ({ settings }) => {
    const [records, queens] = [[...recordsOf(tables, of)], [...queensOf(tables, of)]];
    keepNote(settings, { of, printedOn: isoOfDay(today), step, records, queens });
    return ok(null);
  });
}
