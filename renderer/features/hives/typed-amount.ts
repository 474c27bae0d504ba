/**
 * A number as it was typed, with a point or a comma; null when the field is empty. What is no number at all becomes NaN,
 * which the core refuses with a sentence beside its field; the text stays as typed.
 */
export function amountTyped(text: string): number | null {
  const plain = text.trim().replace(',', '.');
  if (plain === '') return null;
  return /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : Number.NaN;
}
