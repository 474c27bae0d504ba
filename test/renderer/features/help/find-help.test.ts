import { expect, test } from 'vitest';
import { holding } from '../../../../renderer/features/help/find-help.ts';
import { glossary } from '../../../../shared/text/english/cautions.ts';

const wordsFor = (typed: string) =>
  holding(glossary.list, typed, ({ word, meaning }) => `${word} ${meaning}`).map(({ word }) => word);

test('a word is found by its name and by anything in its meaning, whatever the capitals', () => {
  expect(wordsFor('PROVED')).toContain('proved');
  expect(wordsFor('wax')).toEqual(['sealed']);
  expect(wordsFor('larvae builder')).toEqual(['given']);
  expect(wordsFor('no such thing')).toEqual([]);
  expect(wordsFor('  ')).toHaveLength(glossary.list.length);
});

test('accents do not stand in the way', () => {
  expect(holding(['Königin', 'reine'], 'konigin', String)).toEqual(['Königin']);
});
