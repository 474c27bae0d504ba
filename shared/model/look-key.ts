import type { LookResult } from './look.ts';

export interface ResultKey {
  readonly result: LookResult;
  readonly key: string;
  /** The same on the number pad, in every language. */
  readonly digit: string;
}

/** One key a result, with a number-pad twin; the same letters stand on the yard sheet, to be ringed. */
export const RESULT_KEYS: readonly ResultKey[] = [
  { result: 'laying', key: 'L', digit: '1' },
  { result: 'proved', key: 'B', digit: '2' },
  { result: 'virgin', key: 'V', digit: '3' },
  { result: 'cell', key: 'C', digit: '4' },
  { result: 'none', key: 'N', digit: '5' },
  { result: 'drone-layer', key: 'D', digit: '6' },
  { result: 'gone', key: 'X', digit: '7' },
  { result: 'queen', key: 'Q', digit: '8' },
  { result: 'out', key: 'E', digit: '9' },
  { result: 'cell-failed', key: 'F', digit: '-' },
  { result: 'not-looked', key: '.', digit: '0' },
];

/** The letters the person changed; what is not named keeps its usual key. */
export type ResultLetters = { readonly [Result in LookResult]?: string | undefined };

export const resultKeysWith = (letters: ResultLetters): readonly ResultKey[] =>
  RESULT_KEYS.map((one) => ({ ...one, key: letters[one.result] ?? one.key }));

/** The first key that two results would share, with both; null when every result has its own. */
export function keyUsedTwice(
  letters: ResultLetters,
): { readonly key: string; readonly results: readonly [LookResult, LookResult] } | null {
  const seen = new Map<string, LookResult>();
  for (const { result, key } of resultKeysWith(letters)) {
    const other = seen.get(key);
    if (other) return { key, results: [other, result] };
    seen.set(key, result);
  }
  return null;
}
