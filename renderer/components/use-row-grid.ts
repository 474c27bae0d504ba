import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { useLongRows } from './use-long-rows.ts';

/** Height of a row of one line, until it is measured. */
const ROW_HEIGHT = 47;

interface RowGridUse {
  readonly rows: number;
  /** Where typing goes on after an interruption. */
  readonly start: number;
  /** In its note, where that was half typed; else in its first field. */
  readonly startInNote?: boolean;
  /** A key that is none of the grid's own; true when it meant something. */
  readonly onKey: (row: number, key: string) => boolean;
  readonly onFinish: () => void;
  /** Rows up to which all are drawn, where it is not the usual number. */
  readonly wholeUpTo?: number;
}

/** Where typing goes on: at a row that was half typed, else at the first that is not typed at all. */
export function firstToType(
  rows: readonly { readonly id: string; readonly typed: unknown }[],
  found: (id: string) => boolean,
): number {
  const half = rows.findIndex((row) => found(row.id));
  return half >= 0
    ? half
    : Math.max(
        0,
        rows.findIndex((row) => row.typed === null),
      );
}

/**
 * A grid typed row by row: Enter and Down go on, Up goes back to correct, F4 goes to the note, Escape out of it again,
 * Ctrl+Enter finishes. Each row is a `tr[data-row]` with its number; its first field or its result carries `data-now`, its note `data-note`.
 */
export function useRowGrid({ rows, start, startInNote = false, onKey, onFinish, wholeUpTo }: RowGridUse) {
  const table = useRef<HTMLTableElement>(null);
  const [current, setCurrent] = useState(start);
  const long = useLongRows(rows, ROW_HEIGHT, table, wholeUpTo);
  // A row that is not drawn is scrolled to and gets the focus once it is there.
  const wanted = useRef<readonly [row: number, selector: string] | null>([
    start,
    startInNote ? '[data-note]' : '[data-now]',
  ]);
  const focusWanted = () => {
    if (!wanted.current || !table.current) return;
    const [row, selector] = wanted.current;
    const element = table.current.querySelector(`tr[data-row="${row}"]`);
    if (!element) return long.scrollTo(row);
    wanted.current = null;
    element.querySelector<HTMLElement>(selector)?.focus();
  };
  const focusIn = (row: number, selector: string) => {
    wanted.current = [row, selector];
    focusWanted();
  };
  useEffect(focusWanted);
  const go = (to: number) => {
    const row = Math.min(Math.max(0, rows - 1), Math.max(0, to));
    setCurrent(row);
    // At the last row Enter stays where it is; a field is saved when it is left, so it is left for a moment.
    if (row === current) (document.activeElement as HTMLElement | null)?.blur();
    focusIn(row, '[data-now]');
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const ctrl = event.ctrlKey || event.metaKey;
    const moves: Readonly<Record<string, number>> = {
      Enter: current + 1,
      ArrowDown: current + 1,
      ArrowUp: current - 1,
    };
    const to = moves[event.key];
    if (ctrl && event.key === 'Enter') {
      (document.activeElement as HTMLElement | null)?.blur();
      onFinish();
    } else if (ctrl || event.altKey) return;
    else if (to !== undefined) go(to);
    else if (event.key === 'F4') focusIn(current, '[data-note]');
    else if (event.key === 'Escape') focusIn(current, '[data-now]');
    else if (!onKey(current, event.key)) return;
    event.preventDefault();
  };
  return { table, current, setCurrent, go, long, onKeyDown };
}
