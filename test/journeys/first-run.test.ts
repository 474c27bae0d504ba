// F13: from an empty computer to the first batch, with the keys counted and no page to read on the way.
import { expect, test } from 'vitest';
import { openDemo, prepareDoors } from './doors.ts';
import { countKeys, secondsOfKeys } from './key-counter.ts';

const { open } = prepareDoors('2026-05-04');

test('the first batch stands in at most 90 seconds by the keystroke-level model, after three pages', async () => {
  const house = await open();
  const { page } = house;
  const keys = countKeys(page);
  await page.locator('input:focus').waitFor();
  await keys.press('Enter');
  await page.getByRole('heading', { name: 'Today' }).waitFor();
  await keys.press('Control+n');
  await page.locator('select:focus').waitFor();
  await keys.type('la');
  await keys.press('Enter');
  await keys.type('H03');
  await keys.press('Enter');
  await page.getByText('H03 is new and is added with the batch.').waitFor();
  await keys.type('H12');
  await keys.press('Enter', 'Enter', 'Enter');
  await keys.type('20');
  await keys.press('Control+Enter');
  await page.getByRole('heading', { level: 1, name: /26-01 Larva grafting/ }).waitFor();
  await page.getByText('from H03, builder H12').waitFor();
  expect(keys.count).toBeLessThanOrEqual(20);
  // A thought for each of the eight fields and pages, and twenty seconds to look around.
  expect(secondsOfKeys(keys.count, 8) + 20).toBeLessThanOrEqual(90);
  expect(house.problems).toEqual([]);
}, 60_000);

test('days and amounts are written as the computer has them, to be changed in place', async () => {
  const house = await open({ locale: 'en-US' });
  const { page } = house;
  const chosen = (label: string) => page.getByLabel(label, { exact: true }).inputValue();
  await page.getByLabel('Days are written', { exact: true }).waitFor();
  // The habits of the United States, by CLDR.
  expect(await chosen('Days are written')).toBe('month-first');
  expect(await chosen('The week begins on')).toBe('sunday');
  expect(await chosen('Degrees')).toBe('fahrenheit');
  await page.getByLabel('Amounts of feed').selectOption('metric');
  await page.getByRole('button', { name: 'Begin my workbook' }).click();
  await page.getByText('Monday, May 4, 2026', { exact: true }).waitFor();
  await page.evaluate(() => {
    window.location.hash = '/settings';
  });
  await page.getByLabel('Days are written', { exact: true }).waitFor();
  expect([await chosen('The week begins on'), await chosen('Amounts of feed')]).toEqual(['sunday', 'metric']);
  expect(house.problems).toEqual([]);
}, 60_000);

test('the demo is opened at the top of Today, with every place of the side bar in the window', async () => {
  const house = await open();
  const { page } = house;
  // The button stands below the fold: the page is scrolled to it.
  await openDemo(house);
  await expect.poll(() => page.evaluate(() => window.scrollY)).toBe(0);
  for (const place of await page.getByRole('navigation').getByRole('link').all()) {
    const box = await place.boundingBox();
    expect((box?.y ?? Number.NaN) + (box?.height ?? Number.NaN), await place.innerText()).toBeLessThanOrEqual(768);
  }
  expect(house.problems).toEqual([]);
}, 60_000);
