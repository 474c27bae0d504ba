import type { LookResult } from './look.ts';

/** One key a result, with a number-pad twin; the same letters stand on the yard sheet, to be ringed. */
export const RESULT_KEYS: readonly { readonly result: LookResult; readonly key: string; readonly digit: string }[] = [
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
