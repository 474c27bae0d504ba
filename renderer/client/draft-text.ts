import type { Drafts } from '../../shared/contract/drafts.ts';
import type { IsoDay } from '../../shared/kernel/day.ts';

/** The kept text as a value of the same shape as the saved one; null when there is none, or it is of an older shape. */
export function draftOf<Value>(text: string | undefined, saved: Value): Value | null {
  if (text === undefined) return null;
  try {
    const kept: unknown = JSON.parse(text);
    return hasSameShape(kept, saved) ? (kept as Value) : null;
  } catch {
    return null;
  }
}

export const sameValue = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Same kind, and for objects the same fields. A field that may be empty is null or text. */
function hasSameShape(kept: unknown, saved: unknown): boolean {
  if (kept === null || saved === null) return true;
  if (typeof kept !== typeof saved || Array.isArray(kept) !== Array.isArray(saved)) return false;
  if (typeof kept !== 'object' || typeof saved !== 'object') return true;
  const [there, wanted] = [kept as Record<string, unknown>, saved as Record<string, unknown>];
  const fields = Object.keys(wanted);
  return (
    fields.length === Object.keys(there).length && fields.every((field) => hasSameShape(there[field], wanted[field]))
  );
}

export interface SavedRow<Value> {
  readonly id: string;
  /** As the workbook has it. */
  readonly now: Value;
}

export const draftKey = (sheet: string, row: string): string => `${sheet}:${row}`;

/** What waits in the rows, and the rows whose text is in the workbook by now. */
export function foundDrafts<Value>(
  sheet: string,
  rows: readonly SavedRow<Value>[],
  list: Drafts,
  same: (a: Value, b: Value) => boolean,
): { readonly waiting: ReadonlyMap<string, Value>; readonly done: readonly string[] } {
  const found = rows.flatMap(({ id, now }) => {
    const kept = draftOf(list[draftKey(sheet, id)], now);
    return kept === null ? [] : [{ id, kept, done: same(kept, now) }];
  });
  return {
    waiting: new Map(found.filter(({ done }) => !done).map(({ id, kept }) => [id, kept])),
    done: found.filter(({ done }) => done).map(({ id }) => id),
  };
}

/** Sheets of a kind, other than the one shown, in which something waits half typed. */
export function otherSheets(kind: string, shown: string, list: Drafts): readonly string[] {
  const sheets = Object.keys(list)
    .filter((key) => key.startsWith(`${kind}:`))
    .map((key) => key.slice(0, key.lastIndexOf(':')));
  return [...new Set(sheets)].filter((sheet) => sheet !== shown);
}

/** Of a sheet that is named by its kind and its day only. */
export const dayOfSheet = (sheet: string): IsoDay => sheet.slice(sheet.lastIndexOf(':') + 1);
