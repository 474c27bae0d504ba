import fc from 'fast-check';
import { expect, test } from 'vitest';
import { holdsWords, wordsOf } from '../../../../main/engine/notes/match-words.ts';

const finds = (text: string, asked: string) => holdsWords(text, wordsOf(asked));

test.each([
  ['Wasps at the mill.', 'mill wasps', true],
  ['Wasps at the mill.', 'MILL', true],
  ['Wasps at the mill.', 'wasps pond', false],
  ['Beim Frühling war es früh', 'fruhling', true],
  ['Reine très douce', 'TRES', true],
  ['Ants.', '', false],
  ['Ants.', '   ', false],
  ['', 'ants', false],
])('“%s” asked for “%s”: %s', (text, asked, found) => {
  expect(finds(text, asked)).toBe(found);
});

test('any piece of a note finds it', () => {
  const note = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(note, fc.nat(), fc.nat(), (text, from, length) => {
      const signs = [...text];
      const start = from % signs.length;
      const piece = signs.slice(start, start + 1 + (length % signs.length)).join('');
      fc.pre(wordsOf(piece).length > 0);
      expect(finds(text, piece)).toBe(true);
    }),
  );
});
