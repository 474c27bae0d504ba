// Several mating boxes are chosen on the boards and in the list, by keys and by the mouse, and handed to an act at once.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { axeTroubles, show } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

const said = (page: Page) => page.getByRole('status').filter({ hasText: 'chosen:' });
const focusedCode = (page: Page) =>
  page.evaluate(() => /[A-Z]\d+/.exec(document.activeElement?.textContent ?? '')?.[0] ?? null);

test('on both boards and in the list, Shift with the arrows chooses, Ctrl+A takes all, and all of it is told', async () => {
  const { page } = house();
  await show(page, '/boxes');
  const tile = (code: string) => page.getByRole('option', { name: new RegExp(`^${code}`) });
  for (const [shown, arrow] of [
    ['state', 'ArrowDown'],
    ['place', 'ArrowRight'],
  ] as const) {
    await page.getByLabel('Shown', { exact: true }).selectOption(shown);
    await tile('K01').focus();
    for (const _ of [1, 2]) await page.keyboard.press(`Shift+${arrow}`);
    await expect.poll(() => said(page).innerText(), { message: shown }).toMatch(/^3 boxes chosen: K01/);
    expect(await tile('K01').getAttribute('aria-selected')).toBe('true');
    expect(await focusedCode(page)).not.toBe('K01');
    expect(await axeTroubles(page, shown)).toEqual([]);
    await page.keyboard.press('Control+a');
    await expect.poll(() => said(page).innerText(), { message: shown }).toMatch(/^2\d boxes chosen: /);
    await page.keyboard.press('Escape');
    await expect.poll(() => said(page).count()).toBe(0);
  }
  await page.getByLabel('Shown', { exact: true }).selectOption('list');
  await page.getByRole('button', { name: 'K02', exact: true }).focus();
  await page.keyboard.press('Shift+ArrowDown');
  await expect.poll(() => said(page).innerText()).toBe('2 boxes chosen: K02–K03');
  await expect.poll(() => focusedCode(page)).toBe('K03');
  const rows = page.getByRole('grid', { name: 'Mating boxes' }).locator('tr[aria-selected="true"]');
  await expect.poll(() => rows.count()).toBe(2);
  await page.keyboard.press('Space');
  await expect.poll(() => said(page).innerText()).toBe('1 box chosen: K02');
  // Space chose, it did not open the card.
  expect(await page.getByRole('heading', { name: /^K03,/ }).count()).toBe(0);
  expect(await axeTroubles(page, 'list')).toEqual([]);
  expect(house().problems).toEqual([]);
}, 120_000);

test('with the mouse, Ctrl and Shift choose and a plain click opens; the chosen are fed or handed out at once', async () => {
  const { page } = house();
  await show(page, '/today');
  await show(page, '/boxes');
  await page.getByLabel('Shown', { exact: true }).selectOption('list');
  const code = (name: string) => page.getByRole('button', { name, exact: true });
  await code('K02').click({ modifiers: ['Control'] });
  await code('K05').click({ modifiers: ['Shift'] });
  await code('K07').click({ modifiers: ['Control'] });
  await expect.poll(() => said(page).innerText()).toBe('5 boxes chosen: K02–K05, K07');
  await page.getByRole('button', { name: 'Hand them out' }).press('Enter');
  await expect.poll(() => page.getByLabel('Which to hand out').inputValue()).toBe('K02–K05, K07');
  await page.getByRole('button', { name: 'Type feeding for them' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Type feeding' }).waitFor();
  await expect.poll(() => page.getByLabel('Hives and boxes').inputValue()).toBe('K02–K05, K07');
  await page.getByLabel('How much, kg').first().fill('0,5');
  await page.getByRole('button', { name: 'Write it down for all' }).press('Enter');
  await page.getByText('5 feedings saved.').waitFor();
  await show(page, '/boxes');
  await page.getByLabel('Shown', { exact: true }).selectOption('list');
  await code('K07').click();
  await page.getByRole('heading', { name: /^K07,/ }).waitFor();
  expect(house().problems).toEqual([]);
}, 120_000);
