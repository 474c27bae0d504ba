import type { LookRow } from '../../../shared/contract/boxes.ts';
import type { LookResult } from '../../../shared/model/look.ts';
import type { ResultKey } from '../../../shared/model/look-key.ts';

/** The number pad has a comma where the language writes decimals so; it stands for the dot. */
export function resultOfKey(key: string, keys: readonly ResultKey[]): LookResult | null {
  const upper = key === ',' ? '.' : key.toUpperCase();
  return keys.find((one) => one.key === upper || one.digit === key)?.result ?? null;
}

/** Digits typed with Shift are other signs on most keyboards, so marking with Shift is by letters. */
export const marksQueen = (event: { readonly key: string; readonly shiftKey: boolean }): boolean =>
  event.shiftKey && /^\p{Lu}$/u.test(event.key);

export interface GridState {
  readonly current: number;
  /** The fill-rest question is open, with the result it offers. */
  readonly filling: LookResult | null;
  /** A queen's number is being confirmed for the row. */
  readonly numbering: boolean;
}

export const START: GridState = { current: 0, filling: null, numbering: false };

export type GridAct =
  | { readonly kind: 'typed'; readonly mark: boolean }
  | { readonly kind: 'numbered' }
  | { readonly kind: 'up' | 'down' | 'first' | 'last' | 'ask-fill' | 'leave' }
  | { readonly kind: 'fill-with'; readonly result: LookResult }
  | { readonly kind: 'go'; readonly to: number };

/** Where the typing stands after an act. A typed result goes down by itself; marking a queen waits for her number. */
export function gridAfter(state: GridState, act: GridAct, rows: number): GridState {
  const at = (current: number): GridState => ({
    current: Math.min(Math.max(0, rows - 1), Math.max(0, current)),
    filling: null,
    numbering: false,
  });
  switch (act.kind) {
    case 'typed':
      return act.mark ? { ...state, numbering: true } : at(state.current + 1);
    case 'numbered':
    case 'down':
      return at(state.current + 1);
    case 'up':
      return at(state.current - 1);
    case 'first':
      return at(0);
    case 'last':
      return at(rows - 1);
    case 'ask-fill':
      return { ...state, filling: 'laying' };
    case 'fill-with':
      return { ...state, filling: act.result };
    case 'leave':
      return { ...state, filling: null, numbering: false };
    case 'go':
      return at(act.to);
  }
}

/** The first row without a look for this day: where typing goes on after an interruption. */
export const firstOpenRow = (rows: readonly LookRow[]): number =>
  Math.max(
    0,
    rows.findIndex((row) => row.typed === null),
  );

/** The first row whose look is another one now, or -1. */
export const firstChangedRow = (before: readonly LookRow[], now: readonly LookRow[]): number =>
  now.findIndex((row, index) => JSON.stringify(row.typed) !== JSON.stringify(before[index]?.typed));

export const untouchedRows = (rows: readonly LookRow[]): readonly LookRow[] => rows.filter((row) => row.typed === null);

/** The number after the offered one: 26-041 then 26-042. */
export function numberAfter(number: string): string {
  const parts = /^(.*?)(\d+)$/.exec(number);
  if (!parts) return number;
  const digits = parts[2] ?? '';
  return `${parts[1]}${String(Number(digits) + 1).padStart(digits.length, '0')}`;
}
