/** A length as typed, with a point or a comma; null where it is none. */
export function typedMillimetres(text: string): number | null {
  const trimmed = text.trim();
  return /^\d{1,3}([.,]\d{1,3})?$/.test(trimmed) ? Number(trimmed.replace(',', '.')) : null;
}
