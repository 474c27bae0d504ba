import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState, useSyncExternalStore } from 'react';
import type { Notice, Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import { type SaveTrouble, saveTrouble } from './save-trouble.ts';

/**
 * Asks a question and keeps its answer fresh; every change makes all answers be asked again. A question that hands on the
 * signal it is given is dropped once the page has no use for its answer.
 */
export function useAnswer<Answer>(
  key: readonly unknown[],
  question: (context: { readonly signal: AbortSignal }) => Promise<Answer>,
  enabled = true,
) {
  return useQuery({ queryKey: key, queryFn: question, enabled, placeholderData: keepPreviousData });
}

/** A question that may be refused, such as a look at what is being typed. Nothing is asked while `enabled` is false. */
export function useResult<Value>(
  key: readonly unknown[],
  question: () => Promise<Result<Value, Refusal> | null>,
  enabled: boolean,
): { readonly value: Value | null; readonly refusal: Refusal | null; readonly notReached: boolean } {
  const { data, isError } = useAnswer(key, question, enabled);
  if (!enabled || !data) return { value: null, refusal: null, notReached: enabled && isError };
  return data.ok
    ? { value: data.value, refusal: null, notReached: false }
    : { value: null, refusal: data.refusal, notReached: false };
}

/** What a form needs to say about its last change. */
export interface ChangeState {
  readonly refusal: Refusal | null;
  readonly notices: readonly Notice[];
  /** The core could not be reached at all; what was typed is kept. */
  readonly notReached: boolean;
  readonly done: boolean;
  readonly busy: boolean;
}

/**
 * A change of the workbook. `run` answers the value, or null when it was refused or not reached; the reason then stands
 * in `state`. Nothing typed is touched.
 */
export function useChange<Input, Value>(
  change: (input: Input) => Promise<Result<Value, Refusal>>,
  /** False for a question that may be refused: it changes nothing. */
  refreshes: boolean | 'forgets' = true,
) {
  const queries = useQueryClient();
  const [state, setState] = useState<Omit<ChangeState, 'busy'>>(NOTHING_YET);
  const mutation = useMutation({ mutationFn: change });
  const run = async (input: Input): Promise<Value | null> => {
    setState(NOTHING_YET);
    try {
      const result = await mutation.mutateAsync(input);
      if (!result.ok) {
        setState({ ...NOTHING_YET, refusal: result.refusal });
        return null;
      }
      setState({ ...NOTHING_YET, notices: noticesOf(result.value), done: true });
      if (refreshes === 'forgets') queries.removeQueries({ type: 'inactive' });
      if (refreshes) await queries.invalidateQueries();
      return result.value;
    } catch {
      setState({ ...NOTHING_YET, notReached: true });
      return null;
    }
  };
  return {
    run,
    clear: () => setState(NOTHING_YET),
    state: { ...state, busy: mutation.isPending } satisfies ChangeState,
  };
}

/**
 * A change after which another workbook is open, or none. Answers of the one before that are not on the page are
 * forgotten, so that no page shows its hives for a moment as if they were the new one's.
 */
export const useOtherWorkbook = <Input, Value>(change: (input: Input) => Promise<Result<Value, Refusal>>) =>
  useChange(change, 'forgets');

/** Why the last change could not be written; null once one could. */
export const useSaveTrouble = (): SaveTrouble | null => useSyncExternalStore(saveTrouble.listen, saveTrouble.now);

/** Has some questions asked once more, by the first word of their key. */
export function useAskAgain(): (...keys: readonly string[]) => void {
  const queries = useQueryClient();
  return (...keys) => {
    for (const key of keys) void queries.invalidateQueries({ queryKey: [key] });
  };
}

const NOTHING_YET: Omit<ChangeState, 'busy'> = { refusal: null, notices: [], notReached: false, done: false };

function noticesOf(value: unknown): readonly Notice[] {
  if (typeof value !== 'object' || value === null || !('notices' in value)) return [];
  return Array.isArray(value.notices) ? value.notices : [];
}

export const newId = (): string => crypto.randomUUID();
