import { describe, expect, test } from 'vitest';
import {
  firstChangedRow,
  firstOpenRow,
  type GridState,
  gridAfter,
  marksQueen,
  numberAfter,
  resultOfKey,
  START,
} from '../../../../renderer/features/boxes/look-grid-state.ts';
import { LOOK_RESULTS } from '../../../../shared/model/look.ts';
import { RESULT_KEYS } from '../../../../shared/model/look-key.ts';

describe('the typing grid', () => {
  test('has one key and one number-pad twin for every result, none twice', () => {
    expect(new Set(RESULT_KEYS.map((one) => one.result))).toEqual(new Set(LOOK_RESULTS));
    const keys = RESULT_KEYS.flatMap((one) => [one.key, one.digit]);
    expect(new Set(keys).size).toBe(2 * LOOK_RESULTS.length);
    for (const { result, key, digit } of RESULT_KEYS) {
      expect(resultOfKey(key, RESULT_KEYS)).toBe(result);
      expect(resultOfKey(key.toLowerCase(), RESULT_KEYS)).toBe(result);
      expect(resultOfKey(digit, RESULT_KEYS)).toBe(result);
    }
    expect(resultOfKey('z', RESULT_KEYS)).toBeNull();
    // A number pad writes a comma where decimals have one.
    expect(resultOfKey(',', RESULT_KEYS)).toBe('not-looked');
  });

  test('types thirty looks with thirty keys', () => {
    let state: GridState = START;
    for (let key = 0; key < 30; key += 1) state = gridAfter(state, { kind: 'typed', mark: false }, 30);
    expect(state.current).toBe(29);
  });

  test('Shift with a letter waits for her number, Enter goes on', () => {
    expect(marksQueen({ key: 'L', shiftKey: true })).toBe(true);
    expect(marksQueen({ key: '!', shiftKey: true })).toBe(false);
    const waiting = gridAfter(START, { kind: 'typed', mark: true }, 5);
    expect(waiting).toMatchObject({ current: 0, numbering: true });
    expect(gridAfter(waiting, { kind: 'numbered' }, 5)).toMatchObject({ current: 1, numbering: false });
  });

  test('stays inside its rows', () => {
    expect(gridAfter(START, { kind: 'up' }, 5).current).toBe(0);
    expect(gridAfter({ ...START, current: 4 }, { kind: 'down' }, 5).current).toBe(4);
    expect(gridAfter(START, { kind: 'last' }, 0).current).toBe(0);
  });

  test('asks before it fills, and Escape leaves all as it was', () => {
    const asking = gridAfter(START, { kind: 'ask-fill' }, 5);
    expect(asking.filling).toBe('laying');
    expect(gridAfter(asking, { kind: 'fill-with', result: 'none' }, 5).filling).toBe('none');
    expect(gridAfter(asking, { kind: 'leave' }, 5)).toEqual(START);
  });

  test('goes on at the first row without a look, and counts queen numbers up', () => {
    expect(firstOpenRow([{ typed: {} }, { typed: null }, { typed: null }] as never)).toBe(1);
    expect(firstOpenRow([{ typed: {} }] as never)).toBe(0);
    expect(numberAfter('26-041')).toBe('26-042');
    expect(numberAfter('26-099')).toBe('26-100');
    expect(numberAfter('red')).toBe('red');
  });

  test('goes to the row that an undo has changed, and stays where nothing did', () => {
    const laying = { typed: { result: 'laying', note: null } };
    const proved = { typed: { result: 'proved', note: null } };
    const open = { typed: null };
    expect(firstChangedRow([laying, proved] as never, [{ ...laying }, open] as never)).toBe(1);
    expect(firstChangedRow([laying, open] as never, [proved, open] as never)).toBe(0);
    expect(firstChangedRow([laying, open] as never, [{ ...laying }, open] as never)).toBe(-1);
  });
});
