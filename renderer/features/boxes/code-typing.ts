/**
 * A scanner types a box code like a keyboard, and a person may type one too: both jump to its row. A key that begins a
 * code and is no result key begins the typing of a code at once. A key that could be either is held for an instant: only
 * a scanner sends the next key that soon.
 */

/** Keys closer together than this come from a scanner (from memory: it sends one every 1 to 30 ms; people need 80 or more). */
export const SCAN_GAP_MS = 50;

export interface HeldKey {
  readonly key: string;
  readonly shift: boolean;
}

export interface CodeTyping {
  readonly held: readonly HeldKey[];
  /** Milliseconds of the last key, on any clock. */
  readonly at: number;
  /** Begun with a key that is no result, or with the jump key; waits as long as the person likes. */
  readonly byHand: boolean;
}

export type CodeAnswer =
  /** The key is the grid's own. What was held before it and spells no code is given back first, as results. */
  | { readonly kind: 'for-the-grid'; readonly before: readonly HeldKey[] }
  | { readonly kind: 'held'; readonly before: readonly HeldKey[]; readonly typing: CodeTyping }
  | { readonly kind: 'left' }
  | { readonly kind: 'jump'; readonly row: number }
  | { readonly kind: 'no-such-code'; readonly code: string };

export interface CodeKey extends HeldKey {
  readonly at: number;
}

/** Opens the typing of a code by hand, where every letter of it is a result key too. */
export const JUMP_KEY = '/';

export const typedCode = ({ held }: CodeTyping): string => held.map(({ key }) => key).join('');

/** "K07", "k7" and "K007" are said the same way. */
const plain = (code: string): string => code.toLowerCase().replace(/(^|\D)0+(?=\d)/g, '$1');

const begins = (code: string, typed: string): boolean =>
  code.toLowerCase().startsWith(typed.toLowerCase()) || plain(code).startsWith(plain(typed));

/** The row of a code, or the only row whose code begins so; -1 where there is none or more than one. */
export function rowOfCode(codes: readonly string[], typed: string): number {
  const exact = codes.findIndex((code) => plain(code) === plain(typed));
  if (exact >= 0 || typed === '') return exact;
  const [first, ...others] = codes.flatMap((code, index) => (begins(code, typed) ? [index] : []));
  return first !== undefined && others.length === 0 ? first : -1;
}

/** What a key means while codes may be typed. */
export function codeAfter(
  typing: CodeTyping | null,
  pressed: CodeKey,
  codes: readonly string[],
  isResult: (key: string) => boolean,
): CodeAnswer {
  if (typing && !typing.byHand && pressed.at - typing.at > SCAN_GAP_MS)
    return withHeld(typing.held, codeAfter(null, pressed, codes, isResult));
  if (typing === null) return firstKey(pressed, codes, isResult);
  const typed = typedCode(typing);
  if (pressed.key === 'Enter') return entered(typing, typed, codes);
  if (!typing.byHand) return scanned(typing, pressed, codes);
  if (pressed.key === 'Escape') return { kind: 'left' };
  if (pressed.key === 'Backspace') return shortened(typing, pressed.at);
  return byHand(typing, pressed, codes);
}

const withHeld = (held: readonly HeldKey[], answer: CodeAnswer): CodeAnswer =>
  'before' in answer ? { ...answer, before: [...held, ...answer.before] } : answer;

const isCodeSign = (key: string): boolean => /^[\p{L}\p{N}-]$/u.test(key);

function firstKey(pressed: CodeKey, codes: readonly string[], isResult: (key: string) => boolean): CodeAnswer {
  if (pressed.key === JUMP_KEY) return { kind: 'held', before: [], typing: { held: [], at: pressed.at, byHand: true } };
  if (!isCodeSign(pressed.key) || !codes.some((code) => begins(code, pressed.key)))
    return { kind: 'for-the-grid', before: [] };
  return { kind: 'held', before: [], typing: { held: [pressed], at: pressed.at, byHand: !isResult(pressed.key) } };
}

function entered(typing: CodeTyping, typed: string, codes: readonly string[]): CodeAnswer {
  const row = typing.byHand || typing.held.length > 1 ? rowOfCode(codes, typed) : -1;
  if (row >= 0) return { kind: 'jump', row };
  return typing.byHand ? { kind: 'no-such-code', code: typed } : { kind: 'for-the-grid', before: typing.held };
}

/** Keys that come as fast as a scanner's go on only while they spell a code of the list. */
function scanned(typing: CodeTyping, pressed: CodeKey, codes: readonly string[]): CodeAnswer {
  const typed = typedCode(typing) + pressed.key;
  if (!isCodeSign(pressed.key) || !codes.some((code) => begins(code, typed)))
    return { kind: 'for-the-grid', before: typing.held };
  return { kind: 'held', before: [], typing: { ...typing, held: [...typing.held, pressed], at: pressed.at } };
}

/** A slip of the finger must not swallow results: what spells no code is dropped, and the key is the grid's again. */
function byHand(typing: CodeTyping, pressed: CodeKey, codes: readonly string[]): CodeAnswer {
  const typed = typedCode(typing) + pressed.key;
  if (!isCodeSign(pressed.key) || !codes.some((code) => begins(code, typed)))
    return { kind: 'for-the-grid', before: [] };
  return { kind: 'held', before: [], typing: { ...typing, held: [...typing.held, pressed], at: pressed.at } };
}

function shortened(typing: CodeTyping, at: number): CodeAnswer {
  if (typing.held.length <= 1) return { kind: 'left' };
  return { kind: 'held', before: [], typing: { ...typing, held: typing.held.slice(0, -1), at } };
}
