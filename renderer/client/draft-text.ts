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
