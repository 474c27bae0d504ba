// From a box with a proved queen to a hive and to a buyer, by keyboard; the number of keys is counted.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { axeTroubles, turnTo } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

/** Presses keys one by one and answers how many they were. */
async function press(page: Page, keys: readonly string[]): Promise<number> {
  for (const key of keys) await page.keyboard.press(key);
  return keys.length;
}

test('a queen is sold with 19 keys, from anywhere', async () => {
  const { page } = house();
  let keys = await press(page, ['Control+k', ...'24-004']);
  await page.getByRole('option', { name: /^24-004/ }).waitFor();
  keys += await press(page, ['Enter']);
  await page.getByRole('heading', { level: 1, name: 'Queen 24-004' }).waitFor();
  keys += await press(page, ['s']);
  await page.getByLabel('To whom').waitFor();
  keys += await press(page, [...'Ines Berg', 'Enter']);
  await page.getByText('sold: Ines Berg').first().waitFor();
  // The goal set for this flow before it was built: 25 keys at most.
  expect(keys).toBe(19);
  expect(house().problems).toEqual([]);
}, 60_000);

test('a queen is promised, found among the promised, given to that name, and the promise is kept', async () => {
  const { page } = house();
  await press(page, ['Control+k', ...'25-008']);
  await page.getByRole('option', { name: /^25-008/ }).waitFor();
  await press(page, ['Enter']);
  const promised = page.getByRole('region', { name: 'Promised' });
  await promised.getByRole('button', { name: 'Promise her' }).press('Enter');
  await promised.getByLabel('Promised to').waitFor();
  expect(await axeTroubles(page, 'promise')).toEqual([]);
  await promised.getByLabel('Promised to').focus();
  await page.keyboard.type('Nora Lind');
  await promised.getByLabel('Wanted by, if a day was said').fill('12 Jun');
  await page.keyboard.press('Enter');
  await promised.getByText('promised to Nora Lind, by Fri 12 Jun').waitFor();
  await turnTo(page, 5);
  await page.getByLabel('Show', { exact: true }).selectOption('promised');
  await page.getByRole('row', { name: /^25-008.*promised to Nora Lind, by Fri 12 Jun/ }).waitFor();
  await page.getByRole('link', { name: '25-008' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Queen 25-008' }).waitFor();
  await press(page, ['g']);
  await expect.poll(() => page.getByLabel('To whom').inputValue()).toBe('Nora Lind');
  await page.getByRole('button', { name: 'Write it down' }).first().press('Enter');
  await promised.getByText(/^Nora Lind, said on .*: kept$/).waitFor();
  await press(page, ['Control+z']);
  await promised.getByText('promised to Nora Lind, by Fri 12 Jun').waitFor();
  await promised.getByRole('button', { name: 'Take the promise back' }).press('Enter');
  await promised.getByText('She is promised to nobody.').waitFor();
  expect(house().problems).toEqual([]);
}, 60_000);

test('a proposal is accepted with one key; the box is free and the next one is at hand', async () => {
  const { page } = house();
  await turnTo(page, 4);
  const accept = page.getByRole('button', { name: 'Free the box, M01' });
  await accept.focus();
  await page.keyboard.press('Enter');
  await page.getByText('M01 is free. Free for a cell from Sat 23 May.').waitFor();
  const planned = page.getByRole('button', { name: 'Plan the look, M03' });
  await planned.focus();
  await page.keyboard.press('Enter');
  await page.getByText('M03 is on Today’s list for Fri 22 May.').waitFor();
  await page.getByRole('region', { name: 'free, 3' }).getByText('M01').waitFor();
  // A box that is gone to from the very page of boxes opens there.
  await page.keyboard.press('Control+k');
  await page.keyboard.type('K03');
  await page.getByRole('option', { name: /^K03/ }).waitFor();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 2, name: 'K03, virgin' }).waitFor({ timeout: 10_000 });
  expect(house().problems).toEqual([]);
}, 60_000);

test('a check is answered on Today, and her mothers can be walked up', async () => {
  const { page } = house();
  await turnTo(page, 1);
  await page.getByRole('button', { name: /^Eggs: Look for eggs 25-008/ }).press('Enter');
  await page.getByRole('heading', { name: 'Queens and boxes to check' }).waitFor({ state: 'detached' });
  await turnTo(page, 5);
  await page.getByLabel('As', { exact: true }).selectOption('mother lines');
  await page.getByRole('link', { name: '25-003' }).click();
  await page.getByRole('heading', { level: 1, name: 'Queen 25-003' }).waitFor();
  await page.getByRole('link', { name: '24-001' }).first().click();
  await page.getByRole('heading', { level: 1, name: 'Queen 24-001' }).waitFor();
  expect(house().problems).toEqual([]);
}, 60_000);

test('single letters do nothing once they are switched off, and act again when they are on', async () => {
  const { page } = house();
  const switchLetters = async (to: 'on' | 'off') => {
    await page.evaluate(() => {
      window.location.hash = '/settings';
    });
    await page.getByLabel('Single-letter keys on pages').selectOption(to);
    await expect.poll(() => page.getByLabel('Single-letter keys on pages').inputValue()).toBe(to);
    await page.keyboard.press('Control+k');
    await page.keyboard.type('24-005');
    await page.getByRole('option', { name: /^24-005/ }).waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Queen 24-005' }).waitFor();
    await page.keyboard.press('g');
  };
  await switchLetters('off');
  // Two drawings of the page later nothing has opened (WCAG 2.2, 2.1.4 character key shortcuts).
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  await expect.poll(() => page.getByLabel('To whom').count()).toBe(0);
  await switchLetters('on');
  await page.getByLabel('To whom').waitFor();
  expect(house().problems).toEqual([]);
}, 60_000);
