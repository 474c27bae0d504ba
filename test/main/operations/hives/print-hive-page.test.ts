import { expect, test } from 'vitest';
import { printHivePage } from '../../../../main/operations/hives/print-hive-page.ts';
import { mustOk } from '../../../builders/desk.ts';
import { expectTidyPages, readPaperFile } from '../../../builders/read-paper-file.ts';
import { aDeskWithRecords } from '../../../builders/recorded-hives.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

const wish = { colonyId: 'h1', paper: 'a4', large: false } as const;

test('has treatments, moves, queens and looks with day and year, and a dot where nothing was written', async () => {
  const { text } = await readPaperFile(mustOk(await printHivePage(aDeskWithRecords(), wish)));
  for (const part of [
    'Hive H1',
    'Mill, row 2',
    'acid A',
    'LOT 17',
    'Wzgórze',
    'permit 4',
    '26-001',
    'rogue cell removed',
    'sugar syrup 1:1 1.5 L',
  ])
    expect(text).toContain(part);
  expect(text).toContain('Sun 10 May 2026 4 ·');
  expect(text).not.toContain('acid B');
});

test('says where nothing was written down', async () => {
  const { text } = await readPaperFile(mustOk(await printHivePage(aDeskWithRecords(), { ...wish, colonyId: 'h3' })));
  for (const part of ['No look', 'No treatment', 'No feeding', 'No move', 'No queen'])
    expect(text).toContain(`${part} was written down.`);
});

test.each(['a4', 'letter'] as const)('keeps its edges on %s, in usual and in large print', async (paper) => {
  for (const large of [false, true])
    expectTidyPages(
      await readPaperFile(mustOk(await printHivePage(aDeskWithRecords(), { ...wish, paper, large }))),
      paper,
    );
});

test('refuses a hive that is not there', async () => {
  const refusal = refusalOf(await printHivePage(aDeskWithRecords(), { ...wish, colonyId: 'none' }));
  expect(refusal).toEqual({ kind: 'hive-missing', field: 'colonyId' });
});
