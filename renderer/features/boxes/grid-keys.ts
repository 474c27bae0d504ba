import type { KeyboardEvent } from 'react';
import type { LookResult } from '../../../shared/model/look.ts';
import { type GridAct, marksQueen } from './look-grid-state.ts';

export interface Answers {
  readonly filling: LookResult | null;
  readonly act: (act: GridAct) => void;
  readonly fill: (result: LookResult) => void;
  readonly finish: () => void;
  readonly type: (result: LookResult, mark: boolean) => void;
  readonly resultOf: (key: string) => LookResult | null;
}

const MOVES: Readonly<Record<string, GridAct>> = {
  ArrowUp: { kind: 'up' },
  ArrowDown: { kind: 'down' },
  Enter: { kind: 'down' },
  Home: { kind: 'first' },
  End: { kind: 'last' },
  Escape: { kind: 'leave' },
};

/** True when the key meant something to the grid. */
export function answerTo(event: KeyboardEvent, { filling, act, fill, finish, type, resultOf }: Answers): boolean {
  const ctrl = event.ctrlKey || event.metaKey;
  if (ctrl && event.key === 'Enter') finish();
  else if (ctrl && event.key.toLowerCase() === 'd') act({ kind: 'ask-fill' });
  else if (ctrl || event.altKey) return false;
  else if (filling && event.key === 'Enter') fill(filling);
  else if (MOVES[event.key]) act(MOVES[event.key] as GridAct);
  else {
    const result = resultOf(event.key);
    if (!result) return false;
    if (filling) act({ kind: 'fill-with', result });
    else type(result, marksQueen(event));
  }
  return true;
}
