import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { METHODS } from '../../../../shared/model/method.ts';
import { STEPS } from '../../../../shared/model/step.ts';
import { wordsOf } from '../../../../shared/text/catalogue.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { clashSentence } from '../../../../shared/text/german/clashes.ts';
import { german } from '../../../../shared/text/german/german.ts';
import { stepWords } from '../../../../shared/text/sentences.ts';

type Tree = Readonly<Record<string, unknown>>;

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Keys of the English words that have no German ones; a list counts as missing while it is shorter. */
function missingIn(under: Tree, over: unknown, path: readonly string[] = []): readonly string[] {
  return Object.entries(under).flatMap(([key, words]) => {
    const said = isTree(over) ? over[key] : undefined;
    const here = [...path, key];
    if (isTree(words)) return missingIn(words, said, here);
    if (said === undefined && words !== null) return [here.join('.')];
    return Array.isArray(words) && Array.isArray(said) && said.length < words.length ? [here.join('.')] : [];
  });
}

const sentencesIn = (text: string): number =>
  (text.replace(/J\. Apic\. Res\.|z\. B\./g, '').match(/[.!?](?= |$)/g) ?? []).length;

/** Keys whose German words end fewer sentences than the English ones. */
function fewerSentences(under: object, over: unknown, path: readonly string[] = []): readonly string[] {
  return Object.entries(under).flatMap(([key, words]: [string, unknown]) => {
    const said =
      typeof over === 'object' && over !== null ? Object.entries(over).find(([one]) => one === key)?.[1] : null;
    const here = [...path, key];
    if (typeof words === 'object' && words !== null) return fewerSentences(words, said, here);
    if (typeof words !== 'string' || typeof said !== 'string') return [];
    return sentencesIn(said) < sentencesIn(words) ? [here.join('.')] : [];
  });
}

/** Words that were added in English and wait for their German ones; the list may only become shorter. */
const WAITING = readFileSync(new URL('waiting.txt', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'));

describe('German', () => {
  test('has every word and sentence that English has, but for those that wait', () => {
    const missing = missingIn(english, german);
    const isWaiting = (key: string) => WAITING.some((one) => key === one || key.startsWith(`${one}.`));
    expect(missing.filter((key) => !isWaiting(key))).toEqual([]);
    expect(WAITING.filter((one) => !missing.some((key) => key === one || key.startsWith(`${one}.`)))).toEqual([]);
  });

  test('says of every step in every method what, why and what to mind', () => {
    for (const step of STEPS)
      for (const method of METHODS) {
        const inEnglish = stepWords(english, step, method, 'queenless');
        const inGerman = stepWords(wordsOf('de'), step, method, 'queenless');
        for (const part of ['title', 'what', 'why', 'caution'] as const) {
          expect([step, method, part, inGerman[part]]).not.toEqual([step, method, part, inEnglish[part]]);
          // A caution that lost half its length has lost part of its sense.
          expect(inGerman[part].length / inEnglish[part].length).toBeGreaterThan(0.6);
        }
      }
  });

  test('keeps the number of cautions, and quotes as Germans do', () => {
    expect(german.cautions?.list).toHaveLength(english.cautions.list.length);
    expect(JSON.stringify(german)).not.toMatch(/[“][A-ZÄÖÜa-zäöü][^“”„]*”/);
  });

  test('loses no sentence on the way', () => {
    expect(fewerSentences(english, german)).toEqual([]);
  });

  test('counts one colony as one, and writes a score with a comma', () => {
    const { batches, stock } = wordsOf('de');
    expect(batches.drones.colonies(14, 8, 1)).toMatch(/ wäre es eines\.$/);
    expect(batches.drones.colonies(40, 8, 3)).toMatch(/ wären es 3\.$/);
    expect(stock.figure(3.94)).toBe('3,9');
    expect(stock.scores.given(2.5, 'Mai')).toBe('2,5 (Mai)');
  });

  test('bends the batch that has no code yet', () => {
    const own = (id: string) => id;
    const names = { batch: () => wordsOf('de').clashes.thisBatch, hive: own, box: own, day: String };
    const away = { kind: 'must-step-away', step: 'place-cells', batch: 'x', reason: 'away', suits: [] } as const;
    expect(clashSentence({ ...away, on: '2026-05-31' }, names)).toContain('setzen“ von dieser Serie fällt auf');
    const many = {
      kind: 'too-many-cells',
      batch: 'x',
      builderId: 'H12',
      cells: 36,
      usualMost: 20,
      builders: 2,
    } as const;
    expect(clashSentence(many, names)).toMatch(/^Diese Serie hat 36 Zellen/);
  });

  test('what is missing is said in English', () => {
    expect(wordsOf('de').frame.places.today).toBe('Heute');
    expect(wordsOf('de').frame.product).toBe(english.frame.product);
    expect(wordsOf('en')).toBe(english);
  });
});
