import { expect, test } from 'vitest';
import { noteAnswer, saveTrouble, troubleAfter } from '../../../renderer/client/save-trouble.ts';
import { ok, refuse } from '../../../shared/kernel/result.ts';

const FULL = refuse({ kind: 'not-saved', reason: 'disk-full' } as const);

test('a change that could not be written is trouble until one could', () => {
  expect(troubleAfter(null, FULL)).toBe('disk-full');
  expect(troubleAfter('disk-full', refuse({ kind: 'not-saved', reason: 'drive-error' } as const))).toBe('drive-error');
  expect(troubleAfter('disk-full', ok({ saved: true }))).toBeNull();
});

test('a change refused for its own sake neither makes nor ends trouble', () => {
  const refused = refuse({ kind: 'bar-not-found' } as const);
  expect([troubleAfter(null, refused), troubleAfter('disk-full', refused)]).toEqual([null, 'disk-full']);
});

test('an answer of the shell says nothing about the drive', () => {
  for (const answer of [{ available: false }, null, 'text', undefined])
    expect(troubleAfter('disk-full', answer)).toBe('disk-full');
});

test('whoever listens is told when it changes, and only then', () => {
  const told: (string | null)[] = [];
  const stop = saveTrouble.listen(() => told.push(saveTrouble.now()));
  for (const answer of [FULL, FULL, ok(null), ok(null)]) noteAnswer(answer);
  stop();
  noteAnswer(FULL);
  expect(told).toEqual(['disk-full', null]);
  noteAnswer(ok(null));
});
