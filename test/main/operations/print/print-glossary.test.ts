import { expect, test } from 'vitest';
import { printGlossary } from '../../../../main/operations/print/print-glossary.ts';
import { glossary } from '../../../../shared/text/english/cautions.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { expectTidyPages, readPaperFile } from '../../../builders/read-paper-file.ts';

test('has every word of the glossary as the head of its row, with its meaning, and nothing of the workbook', async () => {
  const paper = await readPaperFile(mustOk(await printGlossary(aDesk(), { paper: 'a4', large: false })));
  const heads = paper.spoken.flatMap(([role, text]) => (role === 'TH' ? [text] : []));
  expect(heads.slice(2)).toEqual(glossary.list.map(({ word }) => word));
  const said = paper.spoken.flatMap(([role, text]) => (role === 'TD' ? [text] : []));
  expect(said).toEqual(glossary.list.map(({ meaning }) => meaning));
  expect(paper.text).toContain('no data of anybody');
});

test.each(['a4', 'letter'] as const)('keeps its edges on %s, in usual and in large print', async (paper) => {
  for (const large of [false, true])
    expectTidyPages(await readPaperFile(mustOk(await printGlossary(aDesk(), { paper, large }))), paper);
});
