import { type KeyboardEvent, useLayoutEffect, useRef } from 'react';
import { useLetterKeys } from '../../components/words.ts';

interface JobActs {
  readonly onOpen: () => void;
  readonly onDone: () => void;
  /** null where the bees leave no later day. */
  readonly onPutOff: (() => void) | null;
  readonly onPrint: () => void;
}

/**
 * Keys of the job that has the focus: Enter opens what is typed for it, Space says that it was done, S puts it off, P
 * prints what belongs to it, Up and Down go to the next. A field or a button in the row keeps its own keys, and letters act
 * only where they are not switched off (WCAG 2.2, 2.1.4). When a row goes, its neighbour has the focus.
 */
export function useJobKeys(acts: JobActs) {
  const row = useRef<HTMLLIElement>(null);
  const letterKeys = useLetterKeys();
  useLayoutEffect(() => {
    const own = row.current;
    return () => {
      if (own?.contains(document.activeElement)) neighbourOf(own)?.focus();
    };
  }, []);
  const actOf = (key: string): (() => void) | null => {
    if (key === 'Enter') return acts.onOpen;
    if (key === ' ') return acts.onDone;
    if (key === 's') return letterKeys ? acts.onPutOff : null;
    if (key === 'p') return letterKeys ? acts.onPrint : null;
    if (key === 'ArrowDown') return () => stepTo(row.current, 1);
    return key === 'ArrowUp' ? () => stepTo(row.current, -1) : null;
  };
  const onKeyDown = (event: KeyboardEvent<HTMLLIElement>) => {
    const { target, key, ctrlKey, metaKey, altKey, shiftKey } = event;
    // What is asked in a dialog bubbles here although it lies elsewhere in the page.
    if (!(target instanceof HTMLElement) || !event.currentTarget.contains(target)) return;
    if (ctrlKey || metaKey || altKey || shiftKey || target.closest('input, textarea, select')) return;
    const isLetter = key.length === 1 && key !== ' ';
    const act = isLetter || target === event.currentTarget ? actOf(isLetter ? key.toLowerCase() : key) : null;
    if (!act) return;
    event.preventDefault();
    act();
  };
  const shortcuts = ['Enter', 'Space', letterKeys && acts.onPutOff ? 'S' : null, letterKeys ? 'P' : null];
  return { ref: row, onKeyDown, 'aria-keyshortcuts': shortcuts.filter(Boolean).join(' ') };
}

/** All rows that take keys, over all lists of the page. */
const rowsOf = (own: HTMLElement): readonly HTMLElement[] => [
  ...(own.closest('main')?.querySelectorAll<HTMLElement>('.jobs > li[tabindex]') ?? []),
];

function stepTo(own: HTMLElement | null, by: 1 | -1): void {
  if (!own) return;
  const rows = rowsOf(own);
  rows[rows.indexOf(own) + by]?.focus();
}

function neighbourOf(own: HTMLElement): HTMLElement | undefined {
  const rows = rowsOf(own);
  const at = rows.indexOf(own);
  return rows[at + 1] ?? rows[at - 1];
}
