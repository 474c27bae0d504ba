import { useCallback, useEffect, useRef, useState } from 'react';
import type { JournalStep } from '../../shared/model/journal.ts';
import { ask } from '../client/client.ts';
import { type ChangeState, useAnswer, useChange } from '../client/hooks.ts';
import { savesSettled } from '../client/pending-saves.ts';
import { onTakenOut } from '../client/taken-out.ts';

export type Way = 'undo' | 'redo';

/** What is said after an undo or redo, or after something was taken out. */
export interface Turned {
  readonly way: Way | 'taken-out';
  /** What was taken back, done again or done; null when it was refused. */
  readonly step: JournalStep | null;
  /** One number a turn, so that the same words are said anew. */
  readonly turn: number;
}

/** What an undo would take back and a redo do again. */
export const useUndoState = (isWanted = true) =>
  useAnswer(['history', 'undo-state'], () => ask.history.getUndoState.query(), isWanted);

/** Takes changes of the workbook back and does them again, and keeps what is to be said about it. */
export function useUndo() {
  const undo = useChange(() => ask.history.undo.mutate());
  const redo = useChange(() => ask.history.redo.mutate());
  const [turned, setTurned] = useState<Turned | null>(null);
  const { run: runUndo } = undo;
  const { run: runRedo } = redo;
  const begun = useRef(0);
  /** Whatever was begun last is said, even where an earlier one is answered after it. */
  const sayOnceKnown = useCallback(async (way: Turned['way'], answer: () => Promise<JournalStep | null>) => {
    begun.current += 1;
    const turn = begun.current;
    const step = await answer();
    setTurned((before) => (before && before.turn > turn ? before : { way, step, turn }));
  }, []);
  const turn = useCallback(
    (way: Way) =>
      sayOnceKnown(way, async () => {
        await savesSettled();
        return (way === 'undo' ? runUndo : runRedo)(undefined);
      }),
    [runUndo, runRedo, sayOnceKnown],
  );
  useEffect(() => onTakenOut(() => void sayOnceKnown('taken-out', lastStep)), [sayOnceKnown]);
  const forget = useCallback(() => setTurned(null), []);
  const state: ChangeState = turned?.way === 'redo' ? redo.state : undo.state;
  return { turn, turned: useStanding(turned), forget, state };
}

const lastStep = async (): Promise<JournalStep | null> => (await ask.history.getUndoState.query()).undo;

/** What was taken out is no longer said once another change came after it: the undo beside it would take that one back. */
function useStanding(turned: Turned | null): Turned | null {
  const isTakenOut = turned?.way === 'taken-out';
  const last = useUndoState(isTakenOut).data?.undo;
  return isTakenOut && last?.id !== turned.step?.id ? null : turned;
}
