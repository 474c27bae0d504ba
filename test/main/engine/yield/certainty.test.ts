import { describe, expect, test } from 'vitest';
import { certaintyWord, isNamedBest } from '../../../../main/engine/yield/certainty.ts';

// The limits are a judgement of this house; each word must begin exactly at its own.
describe('words for a chance', () => {
  test.each([
    [0.5, 'cannot-tell'],
    [0.599, 'cannot-tell'],
    [0.6, 'leaning'],
    [0.8, 'probably'],
    [0.95, 'very-likely'],
    [0.99, 'as-good-as-certain'],
  ] as const)('%d is said as %s', (chance, word) => {
    expect(certaintyWord(chance)).toBe(word);
  });

  test('nothing is named the best on two batches, however well they went', () => {
    expect(isNamedBest(0.95, 2)).toBe(false);
    expect(isNamedBest(0.95, 3)).toBe(true);
    expect(isNamedBest(0.89, 30)).toBe(false);
  });
});
