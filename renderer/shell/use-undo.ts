import { useCallback, useState } from 'react';
import type { JournalStep } from '../../shared/model/journal.ts';
import { ask } from '../client/client.ts';
import { type ChangeState, useChange } from '../client/hooks.ts';
import { savesSettled } from '../client/pending-saves.ts';

export type Way = 'undo' | 'redo';

/** What is said after an undo or redo. */
export interface Turned {
  readonly way: Way;
  /** What was taken back or done again; null when it was refused. */
  readonly step: JournalStep | null;
  /** One number a turn, so that the same words are said anew. */
  readonly turn: number;
}

/** Takes changes of the workbook back and does them again, and keeps what is to be said about it. */
export function useUndo() {
  const undo = useChange(() => ask.history.undo.mutate());
  const redo = useChange(() => ask.history.redo.mutate());
  const [turned, setTurned] = useState<Turned | null>(null);
  const { run: runUndo } = undo;
  const { run: runRedo } = redo;
  const turn = useCallback(
    async (way: Way) => {
      await savesSettled();
      const step = await (way === 'undo' ? runUndo : runRedo)(undefined);
      setTurned((before) => ({ way, step, turn: (before?.turn ?? 0) + 1 }));
    },
    [runUndo, runRedo],
  );
  const forget = useCallback(() => setTurned(null), []);
  const state: ChangeState = turned?.way === 'redo' ? redo.state : undo.state;
  return { turn, turned, forget, state };
}
