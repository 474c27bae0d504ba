// Papers for the yard from the window: a sheet with two columns as it is chosen there, read back by a reader of its own.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { readPdf } from '../builders/read-pdf.ts';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { ask } from './own-yard.ts';
import { axeTroubles, show } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

const yardSheet = (page: Page) =>
  page.locator('section', { has: page.getByRole('heading', { name: 'Yard sheet', exact: true }) });
const saved = async (page: Page) => {
  const bytes = await house().saveFile(() =>
    yardSheet(page).getByRole('button', { name: 'Save the yard sheet' }).click(),
  );
  return readPdf(bytes);
};

test('the yard sheet in two columns, then for hives, is printed as it was chosen', async () => {
  const { page, problems } = house();
  await show(page, '/print');
  const section = yardSheet(page);
  await section.getByLabel('Columns').selectOption({ label: 'two, more on a page' });
  await section.getByLabel('With the week ahead on a page of its own').uncheck();
  await section.getByLabel('Squares for notes on the back').check();
  await section.getByText('Print on both sides, on paper that can stand the rain.').waitFor();
  const { pages } = await saved(page);
  const codes = pages.flatMap(({ texts }) => texts.filter(({ text }) => /^[KM]\d\d$/.test(text)));
  expect(new Set(codes.map(({ x }) => x < 105))).toEqual(new Set([true, false]));
  // A back after the one page of lines.
  expect(pages.map(({ texts }) => texts.length < 3)).toEqual([false, true]);
  expect(await axeTroubles(page, 'Print')).toEqual([]);

  await section.getByLabel('Lines for').selectOption({ label: 'every hive' });
  await section.getByText('One line a hive, in the order in which looks at hives are typed').waitFor();
  const hives = await saved(page);
  expect(hives.spoken[0]).toEqual(['H1', expect.stringMatching(/^Yard sheet for hives, all yards/)]);
  expect(hives.spoken.filter(([role, words]) => role === 'TH' && /^H\d\d$/.test(words)).length).toBeGreaterThan(5);

  await section.getByLabel('Large print').check();
  await expect.poll(() => section.getByLabel('Columns').count()).toBe(0);
  expect(problems).toEqual([]);
});

test('a corrected result marks the printed yard sheet out of date, until it is printed again', async () => {
  const { page, problems } = house();
  await page.reload();
  await show(page, '/print');
  await saved(page);
  const stale = yardSheet(page).getByText(
    /^The yard sheet for .+, all yards, printed on .+, is out of date: K01\. Print it again\.$/,
  );
  await expect.poll(() => stale.count()).toBe(0);
  const boxes = (await ask(page, 'query', 'boxes.listBoxes')) as { id: string; code: string; lastLookOn: string }[];
  const box = boxes.find(({ code }) => code === 'K01');
  await ask(page, 'mutation', 'boxes.recordLook', {
    ...{ id: 'corrected', boxId: box?.id, lookedOn: box?.lastLookOn, result: 'none' },
    ...{ strength: null, food: null, note: null, queen: null },
  });
  await page.reload();
  await show(page, '/print');
  await stale.waitFor();
  // A look at the new sheet changes nothing; printing it does.
  await yardSheet(page).getByRole('button', { name: 'Look at it' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await stale.waitFor();
  await saved(page);
  await expect.poll(() => stale.count()).toBe(0);
  expect(problems).toEqual([]);
});

test('a printed report says so, is called out of date after a correction, and holds again when that is taken back', async () => {
  const { page, problems } = house();
  await page.reload();
  await show(page, '/season?tab=report');
  const report = page.locator('section', { has: page.getByRole('heading', { name: 'Season report' }) });
  await house().saveFile(() => report.getByRole('button', { name: 'Save the report' }).click());
  await report.getByText(/^Printed on .+ No record it is made of was changed since\.$/).waitFor();
  const batches = (await ask(page, 'query', 'batches.listBatches')) as { id: string; code: string; season: number }[];
  const batch = batches.find(({ season }) => season === 2026);
  await ask(page, 'mutation', 'batches.setWarmth', { batchId: batch?.id, sealedCelsius: 33 });
  await page.reload();
  await show(page, '/season?tab=report');
  await report.getByText(/^Printed on .+ Something it says was changed since then: print it again\.$/).waitFor();
  await show(page, '/print');
  const stale = page.getByRole('link', { name: /^Report of the season 2026, printed on .+, is out of date\./ });
  await stale.click();
  await expect.poll(() => page.url()).toMatch(/season\?tab=report$/);
  await page.keyboard.press('Control+z');
  await report.getByText(/^Printed on .+ No record it is made of/).waitFor();
  await show(page, '/print');
  await expect.poll(() => stale.count()).toBe(0);
  expect(problems).toEqual([]);
});
