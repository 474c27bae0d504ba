import { type KeyboardEvent, type RefObject, useEffect, useRef, useState } from 'react';
import type { LookRow, LookSheetView } from '../../../shared/contract/boxes.ts';
import type { LookResult } from '../../../shared/model/look.ts';
import {
  firstOpenRow,
  type GridAct,
  gridAfter,
  marksQueen,
  numberAfter,
  resultOfKey,
  START,
  untouchedRows,
} from './look-grid-state.ts';
import { useLookTyping } from './look-typing.ts';

/** What the grid shows and what its keys do: rows as typed, where the typing stands, and the saving behind it. */
export function useLookGrid(view: LookSheetView, sheetDay: string) {
  const [rows, setRows] = useState(view.rows);
  const [state, setState] = useState({ ...START, current: firstOpenRow(view.rows) });
  const [number, setNumber] = useState(view.nextQueenNumber);
  const [finished, setFinished] = useState(false);
  const typing = useLookTyping(sheetDay, (saved) =>
    setRows((before) => before.map((row) => (row.id === saved.id ? saved : row))),
  );
  const grid = useRef<HTMLTableElement>(null);
  const act = (one: GridAct) => setState((before) => gridAfter(before, one, rows.length));
  useFocusOnRow(grid, state.current, state.numbering, finished);
  const typeResult = (row: LookRow, result: LookResult, mark: boolean) => {
    setFinished(false);
    void typing.save(row, { result, queenNumber: null });
    act({ kind: 'typed', mark });
  };
  const giveNumber = (row: LookRow, typedNumber: string) => {
    void typing.save(row, { queenNumber: typedNumber });
    setNumber(numberAfter(typedNumber));
    act({ kind: 'numbered' });
  };
  const fill = (result: LookResult) => {
    for (const row of untouchedRows(rows)) void typing.save(row, { result, queenNumber: null });
    act({ kind: 'last' });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const row = rows[state.current];
    const type = (result: LookResult, mark: boolean) => row && typeResult(row, result, mark);
    if (event.target instanceof HTMLInputElement) {
      if (leavesInput(event, row, grid.current, state.current)) act({ kind: 'down' });
    } else if (event.key === 'F4') {
      event.preventDefault();
      rowElement(grid.current, state.current)?.querySelector<HTMLElement>('input[data-note]')?.focus();
    } else if (row && answerTo(event, { filling: state.filling, act, fill, finish: () => setFinished(true), type }))
      event.preventDefault();
  };
  return { rows, state, number, finished, typing, grid, act, giveNumber, onKeyDown };
}

const rowElement = (grid: HTMLTableElement | null, index: number): HTMLElement | undefined =>
  grid?.querySelectorAll<HTMLElement>('tr[data-row]')[index];

/** In strength, food and note Enter saves and goes down, Escape goes back to the result; true when to go down. */
function leavesInput(
  event: KeyboardEvent,
  row: LookRow | undefined,
  grid: HTMLTableElement | null,
  current: number,
): boolean {
  if (!row || (event.key !== 'Enter' && event.key !== 'Escape') || event.ctrlKey) return false;
  event.preventDefault();
  rowElement(grid, current)?.querySelector<HTMLElement>('[data-now]')?.focus();
  return event.key === 'Enter';
}

interface Answers {
  readonly filling: LookResult | null;
  readonly act: (act: GridAct) => void;
  readonly fill: (result: LookResult) => void;
  readonly finish: () => void;
  readonly type: (result: LookResult, mark: boolean) => void;
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
function answerTo(event: KeyboardEvent, { filling, act, fill, finish, type }: Answers): boolean {
  const ctrl = event.ctrlKey || event.metaKey;
  if (ctrl && event.key === 'Enter') finish();
  else if (ctrl && event.key.toLowerCase() === 'd') act({ kind: 'ask-fill' });
  else if (ctrl || event.altKey) return false;
  else if (filling && event.key === 'Enter') fill(filling);
  else if (MOVES[event.key]) act(MOVES[event.key] as GridAct);
  else {
    const result = resultOfKey(event.key);
    if (!result) return false;
    if (filling) act({ kind: 'fill-with', result });
    else type(result, marksQueen(event));
  }
  return true;
}

function useFocusOnRow(
  grid: RefObject<HTMLTableElement | null>,
  current: number,
  numbering: boolean,
  finished: boolean,
): void {
  useEffect(() => {
    if (finished) return;
    const selector = numbering ? 'input[data-number]' : '[data-now]';
    rowElement(grid.current, current)?.querySelector<HTMLElement>(selector)?.focus();
  }, [grid, current, numbering, finished]);
}
