import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CodeAnswer,
  type CodeTyping,
  codeAfter,
  rowOfCode,
  SCAN_GAP_MS,
} from '../../../../renderer/features/boxes/code-typing.ts';
import { resultOfKey } from '../../../../renderer/features/boxes/look-grid-state.ts';
import { RESULT_KEYS } from '../../../../shared/model/look-key.ts';

const isResult = (key: string) => resultOfKey(key, RESULT_KEYS) !== null;

/** Presses keys with the same pause between them, and tells what became of each. */
function press(keys: readonly string[], codes: readonly string[], pause: number) {
  let typing: CodeTyping | null = null;
  const answers: CodeAnswer[] = [];
  for (const [index, key] of keys.entries()) {
    const pressed = { key, shift: /^[A-Z]$/.test(key), at: index * pause };
    const answer: CodeAnswer = codeAfter(typing, pressed, codes, isResult);
    typing = answer.kind === 'held' ? answer.typing : null;
    answers.push(answer);
  }
  return answers;
}
/** Keys that reach the grid as results, in their order. */
const given = (keys: readonly string[], answers: readonly CodeAnswer[]) =>
  answers.flatMap((answer, index) =>
    'before' in answer
      ? [...answer.before.map((one) => one.key), ...(answer.kind === 'held' ? [] : [keys[index] ?? ''])]
      : [],
  );

const K = ['K01', 'K02', 'K10', 'K11'];
const L = ['L01', 'L02', 'B12'];

describe('a box code in the typing grid', () => {
  test('scanned, jumps to its row, whether or not its letters are result keys', () => {
    expect(press(['K', '0', '2', 'Enter'], K, 10).at(-1)).toEqual({ kind: 'jump', row: 1 });
    expect(press(['L', '0', '2', 'Enter'], L, 10).at(-1)).toEqual({ kind: 'jump', row: 1 });
    expect(press(['B', '1', '2', 'Enter'], L, 10).at(-1)).toEqual({ kind: 'jump', row: 2 });
  });

  test('typed by hand, jumps as well; zeros may be left out, and / opens it where letters are results', () => {
    expect(press(['k', '2', 'Enter'], K, 400).at(-1)).toEqual({ kind: 'jump', row: 1 });
    expect(press(['k', '1', '1', 'Enter'], K, 400).at(-1)).toEqual({ kind: 'jump', row: 3 });
    expect(press(['/', 'l', '2', 'Enter'], L, 400).at(-1)).toEqual({ kind: 'jump', row: 1 });
    expect(press(['k', '0', 'Backspace', '1', '0', 'Enter'], K, 400).at(-1)).toEqual({ kind: 'jump', row: 2 });
  });

  test('that is not in the list is named; Escape leaves', () => {
    expect(press(['k', 'Enter'], K, 400).at(-1)).toEqual({ kind: 'no-such-code', code: 'k' });
    expect(press(['k', 'Escape'], K, 400).at(-1)).toEqual({ kind: 'left' });
  });

  test('slow keys stay results although codes begin with them', () => {
    const keys = ['l', 'b', 'l', 'n'];
    expect(given(keys, press(keys, L, SCAN_GAP_MS + 1))).toEqual(keys);
  });

  test('fast keys that spell no code are results after all, none lost and none moved', () => {
    const keys = ['l', 'l', 'n', 'b', 'v', 'v'];
    expect(given(keys, press(keys, L, 10))).toEqual(keys);
  });

  test('a slip of the finger swallows no result', () => {
    expect(given(['k', 'l', 'v'], press(['k', 'l', 'v'], K, 200))).toEqual(['l', 'v']);
  });

  test('whatever is pressed, keys that reach the grid keep their order, and each reaches it once at most', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom<string>('l', 'b', 'n', '0', '1', '2', 'k', 'v', '/', 'Enter', 'Escape', 'ArrowUp')),
        fc.constantFrom(10, 200),
        (keys, pause) => {
          let from = 0;
          for (const key of given(keys, press(keys, L, pause))) {
            from = keys.indexOf(key, from) + 1;
            expect(from, key).toBeGreaterThan(0);
          }
        },
      ),
    );
  });
});

test('a code finds its row with or without zeros, and by its beginning where only one has it', () => {
  expect(rowOfCode(K, 'k01')).toBe(0);
  expect(rowOfCode(K, 'K1')).toBe(0);
  expect(rowOfCode(['K10', 'K11', 'M03'], 'm')).toBe(2);
  expect(rowOfCode(K, 'K')).toBe(-1);
  expect(rowOfCode(K, '')).toBe(-1);
});
