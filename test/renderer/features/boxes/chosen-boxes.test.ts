import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BoxWalk, boxesBetween, neighbourOf } from '../../../../renderer/features/boxes/box-walk.ts';
import {
  type ChosenBoxes,
  choosingKey,
  NONE_CHOSEN,
  stretchTo,
  turnOver,
} from '../../../../renderer/features/boxes/chosen-boxes.ts';

/** As they stand: a, b, c in a row, below them d, e. */
const ROWS: BoxWalk = {
  run: 'across',
  lines: [
    ['a', 'b', 'c'],
    ['d', 'e'],
  ],
};
/** By state: a column of three, an empty one, a column of two. */
const COLUMNS: BoxWalk = { run: 'down', lines: [['a', 'b', 'c'], [], ['d', 'e']] };

const plain = { ctrlKey: false, metaKey: false, altKey: false, shiftKey: false };
const press = (chosen: ChosenBoxes, walk: BoxWalk, at: string, key: string, held: Partial<typeof plain> = {}) =>
  choosingKey(chosen, walk, at, { key, ...plain, ...held });
const idsOf = ({ ids }: ChosenBoxes) => [...ids].toSorted().join('');

describe('arrows walk', () => {
  test.each([
    [ROWS, 'c', 'ArrowRight', 'd'],
    [ROWS, 'd', 'ArrowLeft', 'c'],
    [ROWS, 'c', 'ArrowDown', 'e'],
    [ROWS, 'd', 'ArrowUp', 'a'],
    [ROWS, 'a', 'ArrowLeft', null],
    [COLUMNS, 'a', 'ArrowDown', 'b'],
    [COLUMNS, 'c', 'ArrowDown', null],
    [COLUMNS, 'c', 'ArrowRight', 'e'],
    [COLUMNS, 'd', 'ArrowLeft', 'a'],
    [COLUMNS, 'a', 'Enter', null],
    [COLUMNS, 'gone', 'ArrowDown', null],
  ] as const)('%o from %s with %s to %s', (walk, at, key, to) => {
    expect(neighbourOf(walk, at, key)).toBe(to);
  });

  test('without choosing anything, and what is chosen stays', () => {
    const one = turnOver(NONE_CHOSEN, 'a');
    expect(press(one, ROWS, 'a', 'ArrowRight')).toEqual({ chosen: one, focus: 'b' });
  });
});

describe('several are chosen', () => {
  test('with Shift the span grows from where it began, and shrinks on the way back', () => {
    const two = press(NONE_CHOSEN, ROWS, 'b', 'ArrowRight', { shiftKey: true });
    expect([two && idsOf(two.chosen), two?.focus]).toEqual(['bc', 'c']);
    const four = two && press(two.chosen, ROWS, 'c', 'ArrowDown', { shiftKey: true });
    expect([four && idsOf(four.chosen), four?.focus]).toEqual(['bcde', 'e']);
    const three = four && press(four.chosen, ROWS, 'e', 'ArrowLeft', { shiftKey: true });
    expect(three && idsOf(three.chosen)).toBe('bcd');
    const other = three && press(three.chosen, ROWS, 'b', 'ArrowLeft', { shiftKey: true });
    expect(other && idsOf(other.chosen)).toBe('ab');
  });

  test('Space adds and takes away one, Ctrl+A takes all that are shown, Esc none', () => {
    const one = press(NONE_CHOSEN, COLUMNS, 'a', ' ')?.chosen ?? NONE_CHOSEN;
    const two = press(one, COLUMNS, 'd', ' ')?.chosen ?? NONE_CHOSEN;
    expect([one, two].map(idsOf)).toEqual(['a', 'ad']);
    expect(idsOf(press(two, COLUMNS, 'a', ' ')?.chosen ?? NONE_CHOSEN)).toBe('d');
    for (const held of [{ ctrlKey: true }, { metaKey: true }])
      expect(idsOf(press(two, COLUMNS, 'a', 'a', held)?.chosen ?? NONE_CHOSEN)).toBe('abcde');
    expect(press(two, COLUMNS, 'a', 'Escape')?.chosen).toEqual(NONE_CHOSEN);
  });

  test('other keys are left to others: Enter, Ctrl+K, Esc with nothing chosen, and Alt with an arrow', () => {
    expect(press(NONE_CHOSEN, ROWS, 'a', 'Enter')).toBeNull();
    expect(press(NONE_CHOSEN, ROWS, 'a', 'k', { ctrlKey: true })).toBeNull();
    expect(press(NONE_CHOSEN, ROWS, 'a', 'Escape')).toBeNull();
    expect(press(NONE_CHOSEN, ROWS, 'b', 'ArrowLeft', { altKey: true })).toBeNull();
  });
});

test('a span holds both its ends, and is the same from either', () => {
  const order = ROWS.lines.flat();
  fc.assert(
    fc.property(fc.constantFrom(...order), fc.constantFrom(...order), (from, to) => {
      const span = boxesBetween(ROWS, from, to);
      expect(span).toEqual(boxesBetween(ROWS, to, from));
      expect([span.includes(from), span.includes(to)]).toEqual([true, true]);
      expect(span.length).toBe(Math.abs(order.indexOf(from) - order.indexOf(to)) + 1);
      expect([...stretchTo(NONE_CHOSEN, ROWS, from, to).ids]).toEqual(span);
    }),
  );
  expect(boxesBetween(ROWS, 'a', 'gone')).toEqual([]);
});
