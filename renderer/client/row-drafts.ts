import { useEffect, useRef, useState } from 'react';
import { draftKey, foundDrafts, type SavedRow } from './draft-text.ts';
import { useDrafts, useKeeping } from './drafts.ts';

/** Half-typed rows of one sheet, by the id of the row. */
export interface RowDrafts<Value> {
  /** What is typed and not saved; null when nothing is. */
  readonly of: (row: string) => Value | null;
  /** True while the row waits with what was typed before the sheet was opened. */
  readonly found: (row: string) => boolean;
  readonly keep: (row: string, value: Value | null) => void;
  /** The value was saved. What was typed in the row meanwhile stays. */
  readonly saved: (row: string, value: Value) => void;
}

/**
 * The half-typed rows of a sheet: there again after a turn to another page, a crash or a restart. The sheet is drawn when
 * `useDrafts` has its list, so that no row stands there without its text.
 * @param sheet names what all rows have in common, such as the day.
 * @param rows as the workbook has them; what was typed and is saved by now is forgotten.
 */
export function useRowDrafts<Value>(
  sheet: string,
  rows: readonly SavedRow<Value>[],
  same: (a: Value, b: Value) => boolean,
): RowDrafts<Value> {
  const keepText = useKeeping();
  const { list } = useDrafts();
  const [begun] = useState(() => foundDrafts(sheet, rows, list ?? {}, same));
  const now = useRef<ReadonlyMap<string, Value>>(begun.waiting);
  const cleared = useRef(false);
  useEffect(() => {
    if (cleared.current) return;
    cleared.current = true;
    for (const row of begun.done) keepText(draftKey(sheet, row), null);
  });
  const keep = (row: string, value: Value | null) => {
    const next = new Map(now.current);
    if (value === null) next.delete(row);
    else next.set(row, value);
    now.current = next;
    keepText(draftKey(sheet, row), value === null ? null : JSON.stringify(value));
  };
  const of = (row: string) => now.current.get(row) ?? null;
  return {
    of,
    keep,
    found: (row) => begun.waiting.has(row) && now.current.has(row),
    saved: (row, value) => {
      const kept = of(row);
      if (kept !== null && same(kept, value)) keep(row, null);
    },
  };
}
