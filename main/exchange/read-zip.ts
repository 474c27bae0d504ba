import { Unzip, UnzipInflate, zipSync } from 'fflate';
import { FILE_LIMITS, UnreadableFile, unreadable } from './file-limits.ts';

/** Compressed bytes handed in at once: a zip bomb unpacks a thousandfold, so that each step stays small. */
const STEP = 4096;

export const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b;

/**
 * The wanted entries of a zip, counted while they are unpacked. Throws UnreadableFile when they grow past the limit, when
 * there are too many, or when the zip is broken. Zips inside are bytes like any others and are not opened.
 */
export function readZip(
  bytes: Uint8Array,
  isWanted: (name: string) => boolean,
  most: number = FILE_LIMITS.unpackedBytes,
): ReadonlyMap<string, Uint8Array> {
  const entries = new Map<string, Uint8Array>();
  let seen = 0;
  let unpacked = 0;
  const unzip = new Unzip((entry) => {
    seen += 1;
    if (seen > FILE_LIMITS.zipEntries) throw unreadable('zip-too-large');
    if (!isWanted(entry.name)) return;
    const parts: Uint8Array[] = [];
    entry.ondata = (error, part, isLast) => {
      // The library hands back what was thrown here before.
      if (error) throw error instanceof UnreadableFile ? error : unreadable('zip-broken');
      unpacked += part.length;
      if (unpacked > most) throw unreadable('zip-too-large');
      parts.push(part);
      if (isLast) entries.set(entry.name, joined(parts));
    };
    entry.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length; at += STEP)
      unzip.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
  } catch (error) {
    throw error instanceof UnreadableFile ? error : unreadable('zip-broken');
  }
  return entries;
}

/** The same entries as a plain zip, for a reader that unpacks by itself: it gets what was counted and nothing else. */
export const plainZip = (entries: ReadonlyMap<string, Uint8Array>): Uint8Array =>
  zipSync(Object.fromEntries(entries), { level: 0 });

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
