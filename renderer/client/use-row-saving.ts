import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Notice, Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import { createSaveLine } from './save-line.ts';

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
  const [line] = useState(() => createSaveLine(() => queries.invalidateQueries()));
  const [said, setSaid] = useState<ReadonlyMap<string, RowSaid>>(new Map());
  const say = (row: string, what: RowSaid) => setSaid((before) => new Map(before).set(row, what));
  const send = async (row: string, change: () => Promise<Result<unknown, Refusal>>): Promise<boolean> => {
    try {
      const result = await change();
      if (!result.ok) {
        say(row, { ...SAVING, state: 'not-saved', refusal: result.refusal });
        return false;
      }
      const value = result.value as { readonly notices?: readonly Notice[] } | null;
      say(row, { ...SAVING, state: 'saved', notices: value?.notices ?? [] });
      return true;
    } catch {
      say(row, { ...SAVING, state: 'not-saved', notReached: true });
      return false;
    }
  };
  const save = (row: string, change: () => Promise<Result<unknown, Refusal>>): void => {
    say(row, SAVING);
    void line.add(() => send(row, change));
  };
  return { save, said, settled: line.settled };
}
