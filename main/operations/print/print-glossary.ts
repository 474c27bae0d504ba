import type { z } from 'zod';
import type { PrintGlossary } from '../../../shared/contract/papers.ts';
import type { PaperFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { flowingPaper } from '../../paper/flowing-paper.ts';
import type { Desk } from '../operation.ts';
import { paperFile, paperFoot } from '../paper-file.ts';
import { workbookWords } from '../workbook-words.ts';

/** The words of the trade with their meanings, for the class; nothing of it comes from the workbook. */
export async function printGlossary(
  desk: Desk,
  { paper, large }: z.infer<typeof PrintGlossary>,
): Promise<Result<PaperFile, Refusal>> {
  const { classPapers, glossary } = workbookWords(desk);
  const { title, columns, file } = classPapers.glossary;
  const page = flowingPaper({ ...paperFoot(desk), foot: classPapers.foot, title, paper, large });
  page.heading(title, 'H1');
  page.table({
    columns: [{ title: columns.word }, { title: columns.meaning }],
    rows: glossary.list.map(({ word, meaning }) => [word, meaning]),
  });
  return ok(paperFile(file, await page.finish()));
}
