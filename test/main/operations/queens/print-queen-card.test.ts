import { expect, test } from 'vitest';
import { printQueenCard } from '../../../../main/operations/queens/print-queen-card.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aPromise } from '../../../builders/queen-promise.ts';
import { expectTidyPages, readPaperFile } from '../../../builders/read-paper-file.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

function aDeskWithQueen() {
  const desk = aDesk();
  const seen = { motherLine: 'Żaneta', firstEggsOn: '2026-05-26', provedOn: '2026-06-04' };
  fill(desk, ({ queens }) => {
    queens.insert(aQueen({ number: '24-041', bornIn: 2024, ...seen }));
    queens.insert(aQueen({ id: 'bare', number: '26-002' }));
    queens.insert(aQueen({ id: 'lost', number: '26-003', place: 'lost' }));
  });
  return desk;
}
const wish = { queenId: 'queen-1', paper: 'a4', large: false } as const;

test('says number, year colour in a word, line, first eggs and proved, how to introduce her, and the cautions', async () => {
  const card = await readPaperFile(mustOk(await printQueenCard(aDeskWithQueen(), wish)));
  // 2024: green, by the international marking code.
  for (const part of ['Queen 24-041', 'green, for 2024', 'Żaneta', 'Tuesday 26 May 2026', 'Thursday 4 June 2026'])
    expect(card.text).toContain(part);
  for (const part of ['no queen and no queen cells', 'severe allergy', 'no health certificate', 'local bee authority'])
    expect(card.text).toContain(part);
  expect(card.spoken.map(([role]) => role)).toContain('TH');
});

test('says to whom she is promised and by when, while it binds or was kept', async () => {
  const desk = aDeskWithQueen();
  fill(desk, ({ queenPromises }) => {
    queenPromises.insert(aPromise({ wantedOn: '2026-06-12' }));
    queenPromises.insert(aPromise({ id: 'p2', queenId: 'bare', promisedTo: 'Ole' }));
    queenPromises.insert(aPromise({ id: 'p3', queenId: 'lost', promisedTo: 'Nils' }));
  });
  const textOf = async (queenId: string) =>
    (await readPaperFile(mustOk(await printQueenCard(desk, { ...wish, queenId })))).text;
  expect(await textOf('queen-1')).toContain('Promised to Ines Berg, by Friday 12 June 2026');
  expect(await textOf('bare')).toContain('Promised to Ole');
  expect(await textOf('lost')).not.toContain('Nils');
});

test('what is not known is said to be so', async () => {
  const card = await readPaperFile(mustOk(await printQueenCard(aDeskWithQueen(), { ...wish, queenId: 'bare' })));
  expect(card.text).toContain('First eggs not known');
  expect(card.text).toContain('not proved');
  expect(card.text).toContain('not written down whether she is marked');
});

test.each(['a4', 'letter'] as const)('fits one page of %s, and in large print keeps its edges', async (paper) => {
  const usual = await readPaperFile(mustOk(await printQueenCard(aDeskWithQueen(), { ...wish, paper })));
  expect(usual.pages).toHaveLength(1);
  expectTidyPages(usual, paper);
  expectTidyPages(
    await readPaperFile(mustOk(await printQueenCard(aDeskWithQueen(), { ...wish, paper, large: true }))),
    paper,
  );
});

test('refuses a queen that is not there', async () => {
  expect(refusalOf(await printQueenCard(aDesk(), wish))).toEqual({ kind: 'queen-missing' });
});
