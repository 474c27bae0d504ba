import { expect, test } from 'vitest';
import {
  doneOn,
  halfTypedNotes,
  STEP_KEYS,
  stepResultOf,
  stillNoted,
} from '../../../../renderer/features/today/step-typing.ts';

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
  expect(doneOn('today', '2026-06-01', '2026-05-28')).toBe('2026-06-01');
  expect(doneOn('yesterday', '2026-06-01', '2026-05-28')).toBe('2026-05-31');
  expect(doneOn('not-done', '2026-06-01', '2026-05-28')).toBeNull();
});

test('who catches up notes the day that was planned; a job done ahead of its day was done today', () => {
  expect(doneOn('as-planned', '2026-06-01', '2026-05-28')).toBe('2026-05-28');
  expect(doneOn('as-planned', '2026-06-01', '2026-06-03')).toBe('2026-06-01');
});

test('a job that is open once more is no longer noted as done, unless that is just being saved', () => {
  const noted = new Map([
    ['taken back', { result: 'today' }],
    ['being saved', { result: 'today' }],
    ['done', { result: 'yesterday' }],
    ['not done', { result: 'not-done' }],
  ] as const);
  const now = stillNoted(noted, ['taken back', 'being saved', 'not done'], (job) => job !== 'being saved');
  expect([...now.keys()]).toEqual(['being saved', 'done', 'not done']);
});

test('a note half typed for a job that is done by now is not lost from sight', () => {
  const drafts = {
    'step-note:b1 make-queenless': '"two frames fr"',
    'step-note:b2 make-queenless': '"open"',
    'step-note:b1 no-such-step': '"odd"',
    'bar-counts:b1': '{"given":"1"}',
  };
  expect(halfTypedNotes(drafts, ['b2 make-queenless'])).toEqual([
    { key: 'step-note:b1 make-queenless', batchId: 'b1', step: 'make-queenless', note: 'two frames fr' },
  ]);
});
