import { useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import type { Notice, Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import { waitFor } from './pending-saves.ts';

export interface RowSaid {
  readonly state: 'saving' | 'saved' | 'not-saved';
  readonly refusal: Refusal | null;
  readonly notices: readonly Notice[];
  readonly notReached: boolean;
}

const SAVING: RowSaid = { state: 'saving', refusal: null, notices: [], notReached: false };

/** Saves rows one after the other in the order they were typed, and keeps what was said about each. */
export function useRowSaving() {
  const queries = useQueryClient();
  const queue = useRef<Promise<void>>(Promise.resolve());
  const [said, setSaid] = useState<ReadonlyMap<string, RowSaid>>(new Map());
  const say = (row: string, what: RowSaid) => setSaid((before) => new Map(before).set(row, what));
  const send = async (row: string, change: () => Promise<Result<unknown, Refusal>>) => {
    try {
      const result = await change();
      if (!result.ok) return say(row, { ...SAVING, state: 'not-saved', refusal: result.refusal });
      const value = result.value as { readonly notices?: readonly Notice[] } | null;
      say(row, { ...SAVING, state: 'saved', notices: value?.notices ?? [] });
      await queries.invalidateQueries();
    } catch {
      say(row, { ...SAVING, state: 'not-saved', notReached: true });
    }
  };
  const save = (row: string, change: () => Promise<Result<unknown, Refusal>>): void => {
    say(row, SAVING);
    queue.current = queue.current.then(() => send(row, change));
    void waitFor(queue.current);
  };
  return { save, said, settled: () => queue.current };
}
