import { useState } from 'react';
import type { PaperFile } from '../../shared/contract/print.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import { shell } from './client.ts';
import { useChange } from './hooks.ts';
import { openPdf, type SavedWords, saveMade } from './made-files.ts';

/** Makes a paper and saves it, or opens it beside the page where a browser shows it; says what became of it. */
export function usePaper<Input>(
  print: (input: Input) => Promise<Result<PaperFile, Refusal>>,
  words: SavedWords & { pages(pages: number): string },
) {
  const made = useChange(print, false);
  const [outcome, setOutcome] = useState<string | null>(null);
  const make = async (input: Input, then: (file: PaperFile) => Promise<string | null>) => {
    setOutcome(null);
    const file = await made.run(input);
    if (file) setOutcome((await then(file)) ?? words.pages(file.pages));
  };
  return {
    save: (input: Input) => void make(input, (file) => saveMade(file, words)),
    open: shell.kind === 'loopback' ? (input: Input) => void make(input, openPdf) : null,
    outcome,
    state: made.state,
  };
}
