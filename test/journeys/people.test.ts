// Two people type in one workbook: each is named once, and the history says whose line is whose.
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { axeTroubles, show } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

test('who types is chosen on the sheet, and the history says who typed', async () => {
  const { page, problems } = house();
  await show(page, '/boxes/looks');
  await page.getByRole('grid').first().waitFor();
  expect(await page.getByLabel('Typing now').count()).toBe(0);
  await show(page, '/settings');
  await page.getByLabel('Names of those who type').fill('Maria, Jo');
  await page.keyboard.press('Enter');
  const writer = page.getByLabel('Typing now');
  await writer.selectOption({ label: 'Jo' });
  await expect.poll(() => writer.inputValue()).toBe('Jo');
  expect(await axeTroubles(page, 'Settings')).toEqual([]);

  await show(page, '/boxes/looks');
  await page.getByLabel('Typing now').selectOption({ label: 'Maria' });
  await expect.poll(() => page.getByLabel('Typing now').inputValue()).toBe('Maria');
  await show(page, '/history');
  await expect.poll(() => page.getByText('typed by Maria').count()).toBeGreaterThan(0);
  await expect.poll(() => page.getByText('typed by Jo').count()).toBeGreaterThan(0);
  await page.keyboard.press('Control+z');
  await page.getByText('typed by Jo').first().waitFor();
  expect(problems).toEqual([]);
});
