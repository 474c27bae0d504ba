import type { PaperFile } from '../../shared/contract/print.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import type { NotedPaper } from '../../shared/model/noted-paper.ts';
import { ask } from './client.ts';
import { useAskAgain } from './hooks.ts';
import type { SavedWords } from './made-files.ts';
import { usePaper } from './use-paper.ts';

/** A paper made from records: noted as printed when it is saved or opened, not when it is only looked at. */
export function useNotedPaper<Input>(
  print: (input: Input) => Promise<Result<PaperFile, Refusal>>,
  words: SavedWords & { pages(pages: number): string },
  of: NotedPaper,
) {
  const askAgain = useAskAgain();
  // A workbook that can only be looked at keeps no note, nor does one that does not answer; the paper is made all the same.
  return usePaper(print, words, () => {
    ask.print.notePaper
      .mutate(of)
      .then(() => askAgain('printed-papers', 'history'))
      .catch(() => {});
  });
}
