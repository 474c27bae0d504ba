import { expect, test } from 'vitest';
import { doneOn, STEP_KEYS, stepResultOf } from '../../../../renderer/features/today/step-typing.ts';

test('each answer has its own letter and number-pad twin', () => {
  const keys = STEP_KEYS.flatMap(({ key, digit }) => [key, digit]);
  expect(new Set(keys).size).toBe(keys.length);
  for (const { result, key, digit } of STEP_KEYS) {
    expect(stepResultOf(key.toLowerCase())).toBe(result);
    expect(stepResultOf(digit)).toBe(result);
  }
  expect(stepResultOf(',')).toBe('not-done');
  expect(stepResultOf('k')).toBeNull();
});

test('yesterday is a day of the calendar, over the end of a month too', () => {
  expect(doneOn('today', '2026-06-01')).toBe('2026-06-01');
  expect(doneOn('yesterday', '2026-06-01')).toBe('2026-05-31');
  expect(doneOn('not-done', '2026-06-01')).toBeNull();
});
