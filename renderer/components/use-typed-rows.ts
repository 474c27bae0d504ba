import { useEffect, useRef, useState } from 'react';
import { followedRows } from './followed-rows.ts';

/** Half-typed rows, as the client keeps them. */
interface HalfTyped<Typed> {
  readonly of: (id: string) => Typed | null;
  readonly keep: (id: string, typed: Typed | null) => void;
}

interface TypedRowsUse<Row, Typed> {
  readonly rows: readonly Row[];
  /** What the workbook holds of a row, as it would be typed. */
  readonly read: (row: Row) => Typed;
  readonly empty: Typed;
  readonly same: (a: Typed, b: Typed) => boolean;
  readonly drafts: HalfTyped<Typed>;
  /** How the last saving of each row went. */
  readonly said: ReadonlyMap<string, { readonly state: 'saving' | 'saved' | 'not-saved' }>;
  /** The workbook was asked anew; these rows are neither being saved nor refused. */
  readonly onFollow?: (quiet: readonly Row[]) => void;
}

/** What is typed in each row of a sheet, and what is saved of it; the rows follow the workbook when it changes. */
export function useTypedRows<Row extends { readonly id: string }, Typed>(use: TypedRowsUse<Row, Typed>) {
  const { rows, read, empty, same, drafts, said, onFollow } = use;
  const [saved, setSaved] = useState<ReadonlyMap<string, Typed>>(() => new Map(rows.map((row) => [row.id, read(row)])));
  const [typed, setTyped] = useState<ReadonlyMap<string, Typed>>(
    () => new Map([...saved].map(([id, now]): [string, Typed] => [id, drafts.of(id) ?? now])),
  );
  const seen = useRef(rows);
  useEffect(() => {
    if (seen.current === rows) return;
    seen.current = rows;
    const isBusy = (id: string) => !['saved', undefined].includes(said.get(id)?.state);
    onFollow?.(rows.filter((row) => !isBusy(row.id)));
    const now = rows.map((row) => ({ id: row.id, now: read(row) }));
    const followed = followedRows(now, { typed, saved }, { empty, same, isBusy });
    setTyped(followed.typed);
    setSaved(followed.saved);
  });
  const of = (row: Row): Typed => typed.get(row.id) ?? empty;
  const savedOf = (row: Row): Typed => saved.get(row.id) ?? empty;
  const type = (row: Row, change: Partial<Typed>) => {
    const next = { ...of(row), ...change };
    setTyped((before) => new Map(before).set(row.id, next));
    drafts.keep(row.id, same(next, read(row)) ? null : next);
  };
  /** What is now typed in a row that is left; null when all of it is saved. */
  const leave = (row: Row): Typed | null => {
    const now = of(row);
    if (same(now, savedOf(row))) return null;
    setSaved((before) => new Map(before).set(row.id, now));
    return now;
  };
  return { of, savedOf, type, leave };
}

/** True for a row whose note was being typed when it was left: typing goes on there. */
export function isNoteHalfTyped<Row extends { readonly id: string }>(
  row: Row | undefined,
  read: (row: Row) => { readonly note: string },
  drafts: { readonly of: (id: string) => { readonly note: string } | null },
): boolean {
  const half = row && drafts.of(row.id);
  return half ? half.note !== read(row).note : false;
}
