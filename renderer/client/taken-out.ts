import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import { useChange } from './hooks.ts';

const listeners = new Set<() => void>();

/** Told each time something was taken out of the workbook; answers how to stop listening. */
export function onTakenOut(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}

/** A change that takes something out. Nothing is asked before; the frame says what went, with its undo. */
export function useTakeOut<Input, Value>(change: (input: Input) => Promise<Result<Value, Refusal>>) {
  const { run, state } = useChange(change);
  const takeOut = async (input: Input): Promise<Value | null> => {
    const gone = await run(input);
    if (gone !== null) for (const listener of listeners) listener();
    return gone;
  };
  return { run: takeOut, state };
}
