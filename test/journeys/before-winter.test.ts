// Which mating boxes could be united before winter: told in a fold, and acted on where the boxes and queens are.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { axeTroubles, show } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

const fold = (page: Page) => page.locator('summary', { hasText: 'Before winter' });
const pairRow = (page: Page, box: string) =>
  page.getByRole('table', { name: 'Boxes that could be united' }).getByRole('row', { name: new RegExp(`^${box} `) });
const boardRow = (page: Page, box: string) =>
  page.getByRole('table', { name: 'How the boxes stand' }).getByRole('row', { name: new RegExp(`^${box} `) });

test('the fold says which boxes to unite and how each stands; a box is freed on its card, and its pair is gone', async () => {
  const { page } = house();
  await show(page, '/boxes');
  await fold(page).press('Enter');
  // Told in main/demo/tell-early-boxes.ts: M04 twice without a queen, M05 a drone-layer, both weak; M01 and M08 proved.
  await pairRow(page, 'M04').waitFor();
  const said = async (box: string) => (await pairRow(page, box).innerText()).replaceAll(/\s+/g, ' ');
  expect(await said('M04')).toMatch(/^M04 M01 Strength 2 of 5: weak\. No queen\. none Look through the box/);
  expect(await said('M05')).toMatch(/^M05 M08 .* the queen of M05: she is a drone-layer Take her out, then unite\.$/);
  expect(await boardRow(page, 'M02').innerText()).toContain('Wait until she is proved.');
  expect(await boardRow(page, 'M08').innerText()).toContain('wanted');
  // A cell of K14 was torn open, and ripe ones of the next set are at hand: that goes before any uniting.
  expect(await boardRow(page, 'K14').innerText()).toContain('Give it the ripe cell');
  expect(await boardRow(page, 'M06').innerText()).toContain('nothing to unite');
  expect(await axeTroubles(page, 'before winter')).toEqual([]);

  await pairRow(page, 'M04').getByRole('link', { name: 'M04' }).press('Enter');
  await page.getByRole('heading', { name: 'M04, failed' }).waitFor();
  await page.getByLabel('Why', { exact: true }).selectOption('united');
  await page.getByRole('button', { name: 'Free a box' }).press('Enter');
  await page.getByRole('heading', { name: 'M04, free' }).waitFor();
  await fold(page).press('Enter');
  await boardRow(page, 'M01').waitFor();
  await expect.poll(() => boardRow(page, 'M04').count()).toBe(0);
  // M05 stands nearer to M08 than to M01, so M01 now stays by itself.
  await expect.poll(() => boardRow(page, 'M01').innerText()).toContain('Can stay by itself.');
  expect(house().problems).toEqual([]);
}, 120_000);
