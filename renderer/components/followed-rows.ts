/** Rows of a typing grid by the id of what they are about: as typed, and as saved. */
export interface ShownRows<Typed> {
  readonly typed: ReadonlyMap<string, Typed>;
  readonly saved: ReadonlyMap<string, Typed>;
}

interface Following<Typed> {
  readonly empty: Typed;
  readonly same: (a: Typed, b: Typed) => boolean;
  /** The row is being saved or was refused. */
  readonly isBusy: (id: string) => boolean;
}

/**
 * The rows after they were asked for anew, as after an undo: each follows the workbook, but for those being saved or
 * refused, and what is being typed stays. The same object where nothing changed.
 */
export function followedRows<Typed>(
  rows: readonly { readonly id: string; readonly now: Typed }[],
  shown: ShownRows<Typed>,
  { empty, same, isBusy }: Following<Typed>,
): ShownRows<Typed> {
  const typed = new Map(shown.typed);
  const saved = new Map(shown.saved);
  let changed = false;
  for (const { id, now } of rows) {
    const before = saved.get(id) ?? empty;
    if (isBusy(id) || same(now, before)) continue;
    changed = true;
    saved.set(id, now);
    if (same(typed.get(id) ?? empty, before)) typed.set(id, now);
  }
  return changed ? { typed, saved } : shown;
}
