import type { z } from 'zod';
import type { PrintInspectorPages } from '../../../shared/contract/papers.ts';
import type { PaperFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { flowingPaper } from '../../paper/flowing-paper.ts';
import type { Desk } from '../operation.ts';
import { paperFile, paperFoot } from '../paper-file.ts';
import { workbookWords } from '../workbook-words.ts';
import { movesTable, treatmentsTable, writingOf } from './hive-paper-tables.ts';
import { gapLines, hivesTable, inspectedYear, queensTable } from './inspector-parts.ts';
import { putTable } from './print-hive-page.ts';
import { stockTable } from './stock-paper-tables.ts';

/** Hives, moves, treatments, scores, tests and queens of one year as they were written down, and first what was not. */
export async function printInspectorPages(
  desk: Desk,
  { yardId, year, paper, large }: z.infer<typeof PrintInspectorPages>,
): Promise<Result<PaperFile, Refusal>> {
  const { tables } = desk.workbook;
  const yard = yardId === null ? null : tables.yards.get(yardId);
  if (yardId !== null && !yard) return refuse({ kind: 'yard-not-found', field: 'yardId' });
  const writing = writingOf(desk);
  const { words } = writing;
  const { inspector, headings, none } = words;
  const inspected = inspectedYear(tables, yardId, year);
  const title = inspector.title(yard?.name ?? inspector.allYards, year);
  const pages = flowingPaper({ ...paperFoot(desk), title, paper, large });
  pages.heading(title, 'H1');
  pages.paragraph(inspector.rules);
  pages.paragraph(inspector.counts(inspected.hives.length, inspected.moves.length, inspected.treatments.length));
  pages.heading(headings.notRecorded, 'H2');
  const gaps = gapLines(inspected, writing);
  if (gaps.length === 0) pages.paragraph(words.noGaps);
  else pages.list(gaps);
  putTable(pages, headings.hives, hivesTable(inspected, writing), none.hives);
  putTable(pages, headings.treatments, treatmentsTable(inspected.treatments, writing), none.treatments);
  const stock = inspected.hives.map(({ colony, stock }) => ({ code: colony.code, stock }));
  putTable(pages, headings.stock, stockTable(stock, workbookWords(desk).stock, writing), none.hives);
  if (stock.length > 0) pages.paragraph(words.scale);
  putTable(pages, headings.moves, movesTable(inspected.moves, writing), none.moves);
  putTable(
    pages,
    headings.queensInOut,
    queensTable(inspected, workbookWords(desk).queens.places, writing),
    none.queens,
  );
  pages.paragraph(words.key);
  return ok(paperFile(inspector.file(year), await pages.finish()));
}
