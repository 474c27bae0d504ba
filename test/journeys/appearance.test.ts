// Settings > Appearance: every choice acts at once, everywhere, and is remembered in the workbook.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { prepareDoors } from './doors.ts';
import { beginWorkbook } from './own-yard.ts';
import { turnTo } from './pages.ts';

const { open } = prepareDoors('2026-05-14');

const choose = (page: Page, label: string, option: string) =>
  page.getByLabel(label, { exact: true }).selectOption({ label: option });

/** What the choices come to on the page itself. */
const shown = (page: Page) =>
  page.evaluate(() => ({
    size: getComputedStyle(document.documentElement).fontSize,
    theme: document.documentElement.dataset.theme,
    density: document.documentElement.dataset.density,
    row: getComputedStyle(document.querySelector('select.control') ?? document.body).minHeight,
    wide: document.documentElement.scrollWidth > document.documentElement.clientWidth,
  }));

test('text size, density, theme, order of days, week and degrees act at once and are remembered', async () => {
  const house = await open({ reducedMotion: 'reduce' });
  const { page } = house;
  await beginWorkbook(page, 'Our queens');
  await page.keyboard.press('Control+,');
  await page.getByRole('heading', { name: 'Appearance' }).waitFor();
  const sizes = await page.getByLabel('Size of the text').locator('option').allInnerTexts();
  expect(sizes).toEqual(['90 %', '100 %', '110 %', '120 %', '130 %', '140 %', '150 %', '160 %']);
  expect(await shown(page)).toMatchObject({ size: '16px', row: '40px' });

  await choose(page, 'Size of the text', '160 %');
  await choose(page, 'Rows', 'compact');
  await choose(page, 'Light or dark', 'dark');
  await choose(page, 'Days are written', 'May 14');
  await choose(page, 'The week begins on', 'Sunday');
  await choose(page, 'Degrees', 'Fahrenheit (°F)');
  await page.getByText('Thursday, May 14, 2026', { exact: true }).waitFor();
  const chosen = { size: '25.6px', theme: 'dark', density: 'compact', row: '34px', wide: false };
  await expect.poll(() => shown(page)).toEqual(chosen);

  await page.reload();
  await page.getByRole('heading', { name: 'Appearance' }).waitFor();
  await expect.poll(() => shown(page)).toEqual(chosen);
  await expect.poll(() => page.getByLabel('Degrees').inputValue()).toBe('fahrenheit');
  await expect.poll(() => page.getByLabel('The week begins on').inputValue()).toBe('sunday');

  await typedDays(page);
  // Reduced motion asked for: nothing on the page moves, not even while a dialog opens.
  await page.keyboard.press('Control+k');
  await page.getByRole('dialog').getByRole('combobox').waitFor();
  await expect.poll(() => page.evaluate(() => document.getAnimations().length)).toBe(0);
  expect(house.problems).toEqual([]);
}, 90_000);

/** A day field reads 5/6 as the person who writes May 14 means it; in ISO order it reads month and day. */
async function typedDays(page: Page): Promise<void> {
  await turnTo(page, 'n');
  const day = page.getByLabel('Day', { exact: true });
  await day.fill('5/6');
  await page.getByText('Wednesday, May 6, 2026, 8 days ago').waitFor();
  await page.keyboard.press('Control+,');
  await choose(page, 'Days are written', '2026-05-14');
  await page.getByText('Thursday 2026-05-14', { exact: true }).waitFor();
  await turnTo(page, 'n');
  // What was typed half is still there, in the new order.
  await expect.poll(() => day.inputValue()).toBe('Wed 2026-05-06');
  await day.fill('06-05');
  await page.getByText('Friday 2026-06-05, in 22 days').waitFor();
  await day.fill('soon');
  await day.blur();
  await page.getByText('This is no day. Type 2026-05-14, 05-14, +3 or today.').waitFor();
  await page.keyboard.press('Escape');
}
