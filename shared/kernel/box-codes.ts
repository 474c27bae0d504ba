const ONE_CODE = /^([A-Za-zÀ-ÿ]*)(\d{1,4})([A-Za-z]?)$/;
const MOST_CODES = 200;

/**
 * Reads codes as people write them: "K01-K18", "K1–18", "K01, M3 M7". A span keeps the digits of its first code
 * (K01-K3 is K01, K02, K03). Codes come back in the order written, each once; null when any part cannot be read.
 */
export function readBoxCodes(text: string): readonly string[] | null {
  const parts = text
    .replace(/\s*[-–]\s*/g, '-')
    .split(/[\s,;]+/)
    .filter((part) => part !== '');
  const codes: string[] = [];
  for (const part of parts) {
    const read = part.includes('-') ? readSpan(part) : isCode(part) ? [part.toUpperCase()] : null;
    if (read === null) return null;
    codes.push(...read);
    if (codes.length > MOST_CODES) return null;
  }
  return codes.length === 0 ? null : [...new Set(codes)];
}

const isCode = (text: string): boolean => ONE_CODE.test(text) || /^[A-Za-zÀ-ÿ0-9]{1,12}$/.test(text);

function readSpan(span: string): readonly string[] | null {
  const [first, last, more] = span.split('-');
  const from = ONE_CODE.exec(first ?? '');
  const to = ONE_CODE.exec(last ?? '');
  if (!from || !to || more !== undefined || from[3] || to[3]) return null;
  const letters = (from[1] ?? '').toUpperCase();
  if (to[1] && to[1].toUpperCase() !== letters) return null;
  const digits = from[2] ?? '';
  const [low, high] = [Number(digits), Number(to[2])];
  if (high < low || high - low >= MOST_CODES) return null;
  return Array.from({ length: high - low + 1 }, (_, step) => letters + String(low + step).padStart(digits.length, '0'));
}

/** K2 before K10: letters by the alphabet, digits by their number. */
export function compareCodes(a: string, b: string): number {
  return a.localeCompare(b, 'en', { numeric: true });
}

/** A row of codes said shortly: K01–K04, K07. Codes that follow each other by one become a span. */
export function shortCodes(codes: readonly string[]): string {
  const sorted = codes.toSorted(compareCodes);
  const spans: { first: string; last: string }[] = [];
  for (const code of sorted) {
    const span = spans.at(-1);
    if (span && follows(span.last, code)) span.last = code;
    else spans.push({ first: code, last: code });
  }
  return spans.map(({ first, last }) => (first === last ? first : `${first}–${last}`)).join(', ');
}

function follows(code: string, next: string): boolean {
  const [a, b] = [ONE_CODE.exec(code), ONE_CODE.exec(next)];
  return a !== null && b !== null && a[1] === b[1] && !a[3] && !b[3] && Number(b[2]) === Number(a[2]) + 1;
}
