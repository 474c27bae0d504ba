import { useState } from 'react';
import type { PaperFile } from '../../shared/contract/print.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import { shell } from './client.ts';
import { useChange } from './hooks.ts';
import { openPdf, type SavedWords, saveMade } from './made-files.ts';

/**
 * Makes a paper and shows it in the window, saves it, or opens it beside the page where a browser shows it; says what
 * became of it.
 */
export function usePaper<Input>(
  print: (input: Input) => Promise<Result<PaperFile, Refusal>>,
  words: SavedWords & { pages(pages: number): string },
) {
  const made = useChange(print, false);
  const [outcome, setOutcome] = useState<string | null>(null);
  const [shown, setShown] = useState<PaperFile | null>(null);
  const tell = async (file: PaperFile, then: (file: PaperFile) => Promise<string | null>) =>
    setOutcome((await then(file)) ?? words.pages(file.pages));
  const make = async (input: Input, then: (file: PaperFile) => Promise<void> | void) => {
    setOutcome(null);
    const file = await made.run(input);
    if (file) await then(file);
  };
  const save = (file: PaperFile) => tell(file, (one) => saveMade(one, words));
  const open = (file: PaperFile) => tell(file, openPdf);
  const inBrowser = shell.kind === 'loopback';
  return {
    look: (input: Input) => void make(input, setShown),
    save: (input: Input) => void make(input, save),
    open: inBrowser ? (input: Input) => void make(input, open) : null,
    shown: shown && {
      file: shown,
      save: () => void save(shown),
      open: inBrowser ? () => void open(shown) : null,
      close: () => setShown(null),
    },
    outcome,
    state: made.state,
  };
}
