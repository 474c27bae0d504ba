import { useState } from 'react';
import type { PaperFile } from '../../shared/contract/print.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import { shell } from './client.ts';
import { useChange } from './hooks.ts';
import { letOut, openPdf, type SavedWords, saidOf } from './made-files.ts';

/**
 * Makes a paper and shows it in the window, saves it, or opens it beside the page where a browser shows it; says what
 * became of it. `whenOut` is told when it was saved or opened, not when it was only looked at or the dialog was left.
 */
export function usePaper<Input>(
  print: (input: Input) => Promise<Result<PaperFile, Refusal>>,
  words: SavedWords & { pages(pages: number): string },
  whenOut: () => void = () => {},
) {
  const made = useChange(print, false);
  const [outcome, setOutcome] = useState<string | null>(null);
  const [shown, setShown] = useState<PaperFile | null>(null);
  const make = async (input: Input, then: (file: PaperFile) => Promise<void> | void) => {
    setOutcome(null);
    const file = await made.run(input);
    if (file) await then(file);
  };
  const save = async (file: PaperFile) => {
    const went = await letOut(file);
    setOutcome(saidOf(went, words) ?? words.pages(file.pages));
    if (went !== 'left' && went !== 'failed') whenOut();
  };
  const open = async (file: PaperFile) => {
    await openPdf(file);
    setOutcome(words.pages(file.pages));
    whenOut();
  };
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
