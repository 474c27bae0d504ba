/** A small generator of numbers that is the same in every run (mulberry32, from memory). */
export function seededNumbers(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below;
  };
}

type Numbers = (below: number) => number;
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Pieces that readers trip over, in texts and in JSON. */
const NASTY = [
  '"',
  "'",
  ',',
  ';',
  '\r',
  '\n',
  '\r\n',
  '\t',
  '\0',
  '\ufeff',
  '=1+1',
  '__proto__',
  'constructor',
  '-1',
  '1e308',
  'NaN',
  'null',
  '[',
  '{',
  '}',
  ']',
  '[[[[',
  '"":',
  '2026-02-30',
  '31/12/2024',
  '99999999999',
  '\ud83d\ude00',
  '&lt;',
  '<c r="XFD1048576"/>',
].map(bytesOf);

/** One to eight harms: bytes flipped, cut out, doubled, overwritten, moved, or a nasty piece put in. */
export function harmed(seed: Uint8Array, number: Numbers): Uint8Array {
  let bytes: Uint8Array = Uint8Array.from(seed);
  for (let harms = 1 + number(8); harms > 0 && bytes.length > 0; harms -= 1) {
    const at = number(bytes.length);
    const length = 1 + number(Math.min(64, bytes.length));
    switch (number(6)) {
      case 0:
        bytes[at] = number(256);
        break;
      case 1:
        bytes = joined(bytes.subarray(0, at), bytes.subarray(at + length));
        break;
      case 2:
        bytes = joined(bytes.subarray(0, at), bytes.subarray(at, at + length), bytes.subarray(at));
        break;
      case 3:
        bytes = joined(bytes.subarray(0, at), NASTY[number(NASTY.length)] ?? seed, bytes.subarray(at));
        break;
      case 4:
        bytes.fill(number(256), at, at + length);
        break;
      default:
        if (number(4) === 0) bytes = bytes.slice(0, at);
        else bytes.copyWithin(number(bytes.length), at, at + length);
    }
  }
  return bytes;
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const NASTY_VALUES = [
  null,
  -1,
  0,
  1.5,
  1e308,
  '',
  ' ',
  'x'.repeat(3000),
  '__proto__',
  '2026-02-30',
  '9999-12-31',
  true,
  [],
  {},
  [[]],
  { id: 'id' },
  'batch-1',
  'box-1',
  'K01',
  '26-01',
  Number.MAX_SAFE_INTEGER,
  '\ud800',
  '\0',
] as const;

/** A text that is still JSON, with one to four of its values changed, taken away or doubled. */
export function harmedJson(seed: Uint8Array, number: Numbers): Uint8Array {
  const whole: unknown = JSON.parse(new TextDecoder().decode(seed));
  for (let harms = 1 + number(4); harms > 0; harms -= 1) harmOneValue(whole, number);
  return bytesOf(JSON.stringify(whole));
}

function harmOneValue(whole: unknown, number: Numbers): void {
  let holder: unknown = whole;
  for (let depth = 0; depth < 5; depth += 1) {
    const keys = typeof holder === 'object' && holder !== null ? Object.keys(holder) : [];
    const key = keys[number(Math.max(1, keys.length))];
    if (key === undefined) return;
    const inside = (holder as Record<string, unknown>)[key];
    const isLeaf = typeof inside !== 'object' || inside === null;
    if (isLeaf || number(8) === 0) {
      change(holder as Record<string, unknown>, key, number);
      return;
    }
    holder = inside;
  }
}

function change(holder: Record<string, unknown> | unknown[], key: string, number: Numbers): void {
  const record = holder as Record<string, unknown>;
  switch (number(4)) {
    case 0:
      delete record[key];
      break;
    case 1:
      if (Array.isArray(holder)) holder.push(structuredClone(record[key]));
      else record[`${key}2`] = record[key];
      break;
    default:
      record[key] = structuredClone(NASTY_VALUES[number(NASTY_VALUES.length)]);
  }
}
