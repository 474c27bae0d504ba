/**
 * The text of a file whose letters are UTF-8, UTF-16 or Windows-1252. A mark at the beginning decides; without one, many
 * zero bytes mean UTF-16, and what is no valid UTF-8 is taken for Windows-1252, in which every byte is a letter.
 */
export function decodeText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return decode(bytes, 'utf-16le');
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return decode(bytes, 'utf-16be');
  const utf16 = unmarkedUtf16(bytes.subarray(0, SAMPLE));
  if (utf16 !== null) return decode(bytes, utf16);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return decode(bytes, 'windows-1252');
  }
}

/** So many bytes show which encoding it is. */
const SAMPLE = 4000;

const decode = (bytes: Uint8Array, encoding: string): string => new TextDecoder(encoding).decode(bytes);

/** Latin letters in UTF-16 have a zero as every second byte; no other text has zeros at all. */
function unmarkedUtf16(sample: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  let even = 0;
  let odd = 0;
  for (const [index, byte] of sample.entries()) {
    if (byte !== 0) continue;
    if (index % 2 === 0) even += 1;
    else odd += 1;
  }
  if (Math.max(even, odd) < sample.length / 5) return null;
  return odd > even ? 'utf-16le' : 'utf-16be';
}
