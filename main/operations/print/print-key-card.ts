import type { z } from 'zod';
import type { PrintKeyCard } from '../../../shared/contract/papers.ts';
import type { PaperFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { resultKeysWith } from '../../../shared/model/look-key.ts';
import { flowingPaper } from '../../paper/flowing-paper.ts';
import type { Desk } from '../operation.ts';
import { paperFile, paperFoot } from '../paper-file.ts';
import { storedSettings } from '../stored-settings.ts';
import { workbookWords } from '../workbook-words.ts';

/** The keys of the evening's typing, as the person set them, above the fold; those of the program below. */
export async function printKeyCard(
  desk: Desk,
  { paper, large }: z.infer<typeof PrintKeyCard>,
): Promise<Result<PaperFile, Refusal>> {
  const { keyCard: words, looks: lookWords, help } = workbookWords(desk);
  const { columns } = words;
  const card = flowingPaper({ ...paperFoot(desk), title: words.title, paper, large });
  card.heading(words.results, 'H1');
  card.table({
    columns: [{ title: columns.key }, { title: columns.digit }, { title: columns.result }, { title: columns.meaning }],
    rows: resultKeysWith(storedSettings(desk.workbook.tables.settings).resultLetters).map(({ key, digit, result }) => [
      key,
      digit,
      lookWords[result].name,
      lookWords[result].line,
    ]),
  });
  card.paragraph(words.shift);
  card.fold(words.fold);
  card.heading(words.shortcuts, 'H2');
  const ofProgram = [{ title: columns.key }, { title: columns.does }];
  card.table(
    large
      ? { columns: ofProgram, rows: help.keys.map(([key, does]) => [key, does]) }
      : { columns: [...ofProgram, ...ofProgram], rows: sideBySide(help.keys) },
  );
  return ok(paperFile(words.file, await card.finish()));
}

/** The first half beside the second, so that they stay below the fold of one page. */
function sideBySide(keys: readonly (readonly [string, string])[]): readonly (readonly string[])[] {
  const half = Math.ceil(keys.length / 2);
  return keys.slice(0, half).map((left, index) => [...left, ...(keys[half + index] ?? ['', ''])]);
}
