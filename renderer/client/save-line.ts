import { waitFor } from './pending-saves.ts';

export interface SaveLine {
  /** @param save answers true when the workbook is another one now. */
  readonly add: (save: () => Promise<boolean>) => Promise<void>;
  /** Everything typed so far is saved or refused, and the page's answers have been asked anew. */
  readonly settled: () => Promise<void>;
}

/**
 * Saves one after the other in the order they were typed. The page's answers are asked anew when nothing waits any more:
 * thirty quick rows on an old computer wait for their thirty saves only.
 */
export function createSaveLine(refresh: () => Promise<unknown>): SaveLine {
  let line: Promise<void> = Promise.resolve();
  let refreshed: Promise<unknown> = Promise.resolve();
  let waiting = 0;
  let stale = false;
  const add = (save: () => Promise<boolean>): Promise<void> => {
    waiting += 1;
    line = line.then(async () => {
      const changed = await save();
      waiting -= 1;
      stale ||= changed;
      if (!stale || waiting > 0) return;
      stale = false;
      refreshed = refresh();
    });
    return waitFor(line);
  };
  const settled = async () => {
    await line;
    await refreshed;
  };
  return { add, settled };
}
