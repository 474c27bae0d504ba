import type { Refusal } from '../../shared/contract/refusal.ts';

export type SaveTrouble = Extract<Refusal, { kind: 'not-saved' }>['reason'];

let trouble: SaveTrouble | null = null;
const listeners = new Set<() => void>();

/** Told of every answer to a change. A change that could not be written stands until one could. */
export function noteAnswer(answer: unknown): void {
  const next = troubleAfter(trouble, answer);
  if (next === trouble) return;
  trouble = next;
  for (const changed of listeners) changed();
}

/** Only what was saved ends the trouble; a change refused for its own sake says nothing about the drive. */
export function troubleAfter(before: SaveTrouble | null, answer: unknown): SaveTrouble | null {
  if (typeof answer !== 'object' || answer === null || !('ok' in answer)) return before;
  if (answer.ok === true) return null;
  const refusal = 'refusal' in answer ? (answer.refusal as Refusal) : null;
  return refusal?.kind === 'not-saved' ? refusal.reason : before;
}

export const saveTrouble = {
  listen(changed: () => void): () => void {
    listeners.add(changed);
    return () => listeners.delete(changed);
  },
  now: (): SaveTrouble | null => trouble,
};
