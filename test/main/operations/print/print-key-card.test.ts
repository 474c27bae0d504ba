import { expect, test } from 'vitest';
import { printKeyCard } from '../../../../main/operations/print/print-key-card.ts';
import { RESULT_KEYS } from '../../../../shared/model/look-key.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { expectTidyPages, readPaperFile } from '../../../builders/read-paper-file.ts';

test('has every result with its letter and number-pad key, the person’s own letters where changed', async () => {
  const desk = aDesk();
  fill(desk, ({ settings }) => settings.put('resultLetters', { laying: 'Ž' }));
  const { spoken } = await readPaperFile(mustOk(await printKeyCard(desk, { paper: 'a4', large: false })));
  const heads = spoken.filter(([role]) => role === 'TH').map(([, text]) => text);
  for (const { key, result } of RESULT_KEYS) expect(heads).toContain(result === 'laying' ? 'Ž' : key);
  const row = heads.indexOf('Ž');
  expect(row).toBeGreaterThan(0);
  expect(spoken.map(([, text]) => text)).toContain('1');
});

test.each(['a4', 'letter'] as const)('on %s the keys of the program stand below the fold', async (paper) => {
  const card = await readPaperFile(mustOk(await printKeyCard(aDesk(), { paper, large: false })));
  expect(card.pages).toHaveLength(1);
  const middle = (card.pages[0]?.height ?? 0) / 2;
  const at = (word: string) => card.pages[0]?.texts.find(({ text }) => text === word)?.y ?? 0;
  expect(at('Ctrl+K')).toBeGreaterThan(middle);
  expect(at('drone-layer')).toBeLessThan(middle);
  expectTidyPages(card, paper);
  expectTidyPages(await readPaperFile(mustOk(await printKeyCard(aDesk(), { paper, large: true }))), paper);
});
