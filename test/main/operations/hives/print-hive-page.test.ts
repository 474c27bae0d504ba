import { expect, test } from 'vitest';
import { printHivePage } from '../../../../main/operations/hives/print-hive-page.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { expectTidyPages, readPaperFile } from '../../../builders/read-paper-file.ts';
import { aDeskWithRecords, aDeskWithStock } from '../../../builders/recorded-hives.ts';
import { refusalOf } from '../../../builders/running-batch.ts';
import { aTest } from '../../../builders/stock.ts';

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

/** The means by hand: (1 + 3.5 + 4) / 3 = 2.83; 44 of 50 = 88 in 100; 2 of 320 = 0.6 per 100. */
test('has the scores with their n, the tests with what was counted, and what was never written down', async () => {
  const { text } = await readPaperFile(mustOk(await printHivePage(aDeskWithStock(), wish)));
  for (const part of [
    'Gentleness 2.8, too few to say: 3 of 4 3 4.0 (Mon 1 Jun 2026), 3.5 (Fri 1 May 2026), 1.0 (Sun 1 Jun 2025)',
    'Calmness on the comb not written down 0',
    'Swarming 3.0, too few to say: 1 of 4 1 3.0 (Mon 1 Jun 2026)',
    'n is how many there are.',
    'Tue 2 Jun 2026 Pin test 88 % 44 of 50, after 10 h ·',
    'Mon 20 Apr 2026 Mites washed off 0.6 per 100 bees 2 of 320 ·',
    'Not written down: Freeze test, Honey.',
  ])
    expect(text.replace(/\s+/g, ' ')).toContain(part);
  const { text: bare } = await readPaperFile(mustOk(await printHivePage(aDeskWithRecords(), wish)));
  expect(bare).toContain('No score was written down.');
  expect(bare).toContain('No test was written down.');
});

test.each(['a4', 'letter'] as const)('keeps its edges on %s, in usual and in large print', async (paper) => {
  for (const large of [false, true])
    expectTidyPages(
      await readPaperFile(mustOk(await printHivePage(aDeskWithStock(), { ...wish, paper, large }))),
      paper,
    );
});

test('refuses a hive that is not there', async () => {
  const refusal = refusalOf(await printHivePage(aDeskWithRecords(), { ...wish, colonyId: 'none' }));
  expect(refusal).toEqual({ kind: 'hive-missing', field: 'colonyId' });
});

test('honey stands in the measures the person reads', async () => {
  const desk = aDeskWithStock();
  // 50 lb are 22.680 kg: NIST Special Publication 811, appendix B.8.
  const honey = { kind: 'honey', counted: 22.68, outOf: null, hours: null } as const;
  fill(desk, ({ stockTests }) => stockTests.insert(aTest({ id: 'honey', colonyId: 'h1', ...honey })));
  const page = async () =>
    (await readPaperFile(mustOk(await printHivePage(desk, wish)))).text.replaceAll('\u00a0', ' ');
  expect(await page()).toContain('Honey 22.7 kg');
  mustOk(saveSettings(desk, { measures: 'us' }));
  expect(await page()).toContain('Honey 50.0 lb');
});
