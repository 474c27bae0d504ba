import { expect, test } from 'vitest';
import { printInspectorPages } from '../../../../main/operations/hives/print-inspector-pages.ts';
import { mustOk } from '../../../builders/desk.ts';
import { expectTidyPages, readPaperFile } from '../../../builders/read-paper-file.ts';
import { aDeskWithRecords, aDeskWithStock } from '../../../builders/recorded-hives.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

const wish = { yardId: null, year: 2026, paper: 'a4', large: false } as const;
const textOf = async (changes: Partial<Parameters<typeof printInspectorPages>[1]> = {}) =>
  (await readPaperFile(mustOk(await printInspectorPages(aDeskWithRecords(), { ...wish, ...changes })))).text;

test('has the year’s hives, treatments, moves and queens, and defers to local rules', async () => {
  const text = await textOf();
  expect(text).toContain('Hive records 2026, all yards');
  expect(text).toContain('your local rules and your bee authority');
  expect(text).toContain('2 hives, 2 moves, 2 treatments.');
  for (const part of ['acid A', 'acid B', 'permit 4', '26-001 in a hive H1', '26-001 sold ·'])
    expect(text).toContain(part);
  // Another year's treatment, and a hive that had ended before.
  expect(text).not.toContain('long ago');
  expect(text).not.toContain('H3');
});

test('names what was not written down, and where', async () => {
  const text = await textOf();
  for (const gap of [
    'No look in the year: H2.',
    'Treatments without an amount: H2 Sun 2 Aug 2026.',
    'Treatments without a last day: H2 Sun 2 Aug 2026.',
    'Moves without the yard they left or came to: H2 Wed 1 Jul 2026.',
    'Moves without a permit or other paper: H2 Wed 1 Jul 2026.',
    'Queens given or sold without a receiver: 26-001.',
  ])
    expect(text).toContain(gap);
});

/** By hand: (3.5 + 4) / 2 = 3.75, the score and the count of 2025 left out; of swarming the lowest; 44 of 50 = 88 in 100. */
test('has each hive’s scores of the year with n and its latest tests, and says where there is none', async () => {
  const made = mustOk(await printInspectorPages(aDeskWithStock(), wish));
  const text = (await readPaperFile(made)).text.replace(/\s+/g, ' ');
  expect(text).toContain('Scores and tests of the year');
  for (const part of [
    '3.8 (n 2)',
    '3.0 (n 1)',
    '0.6 per 100',
    '88 %',
    'Tue 2 Jun',
    'No count of mites in the year: H2.',
  ])
    expect(text).toContain(part);
  // Calmness of H1, and all five cells of H2.
  expect(text.split('of the year')[1]?.match(/not written down/g)?.length).toBe(6);
  expect(text).not.toContain('80 %');
  const last = await textOf({ year: 2023 });
  expect(last).toContain('No count of mites in the year: H1, H2, H3.');
});

test('of one yard has its hives and those that passed through it', async () => {
  const hill = await textOf({ yardId: 'hill' });
  expect(hill).toContain('Hive records 2026, Wzgórze');
  expect(hill).toContain('1 hive, 1 move, 1 treatment.');
  expect(hill).not.toContain('acid B');
});

test('a year in which nothing was written says so', async () => {
  const text = await textOf({ year: 2023 });
  for (const part of ['No treatment', 'No move', 'No queen']) expect(text).toContain(`${part} was written down.`);
});

test.each(['a4', 'letter'] as const)('keeps its edges on %s, in usual and in large print', async (paper) => {
  for (const large of [false, true]) {
    const made = mustOk(await printInspectorPages(aDeskWithStock(), { ...wish, paper, large }));
    expectTidyPages(await readPaperFile(made), paper);
  }
});

test('refuses a yard that is not there', async () => {
  expect(refusalOf(await printInspectorPages(aDeskWithRecords(), { ...wish, yardId: 'none' }))).toEqual({
    kind: 'yard-not-found',
    field: 'yardId',
  });
});
