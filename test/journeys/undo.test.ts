// Typed by mistake and taken back: a look in the grid, Ctrl+Z, the same again with Ctrl+Y; counts on the page of a batch
// with the history of that batch; letters in a field, which are the field's own; and all of it in the history.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { log } from '../double/electron.ts';
import { DEMO_DAY, openDemo, prepareDoors } from './doors.ts';

const { doors } = prepareDoors(DEMO_DAY);

const status = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text }).waitFor();

async function goTo(page: Page, typed: string, heading: RegExp): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.keyboard.type(typed);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: heading }).waitFor();
}

async function typeAndTakeBack(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Type looks' }).first().click();
  const grid = page.getByRole('grid');
  await grid.waitFor();
  const now = (box: string) => grid.getByRole('row', { name: new RegExp(`^${box} `) }).locator('[data-now]');
  // Faster than the rows are saved: the undo waits its turn.
  for (const key of ['l', 'v', 'Control+z']) await page.keyboard.press(key);
  await status(page, 'Undone: K02 virgin.');
  await now('K02').filter({ hasNotText: 'virgin' }).waitFor();
  await expect.poll(() => now('K01').textContent()).toContain('laying');
  // The typing stands on the row that is open again.
  await page.keyboard.press('5');
  await now('K02').filter({ hasText: 'no queen' }).waitFor();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await status(page, 'Undone: K01 laying.');
  await now('K01').filter({ hasNotText: 'laying' }).waitFor();
  await page.keyboard.press('Control+y');
  await status(page, 'Done again: K01 laying.');
  await page.keyboard.press('Control+Shift+z');
  await status(page, 'Done again: K02 no queen.');
  await now('K02').filter({ hasText: 'no queen' }).waitFor();
  await page.reload();
  await now('K02').filter({ hasText: 'no queen' }).waitFor();
  await page.keyboard.press('Control+z');
  await status(page, 'Undone: K02 no queen.');
}

async function correctCounts(page: Page): Promise<void> {
  await goTo(page, '26-01', /26-01/);
  const taken = page.getByLabel('Bar 1, Taken');
  const before = await taken.inputValue();
  const given = await page.getByLabel('Bar 1, Given').inputValue();
  await taken.fill(given);
  // The letters in the field are the field's own, as long as they are not saved.
  await taken.press('Control+z');
  await expect.poll(() => taken.inputValue()).toBe(before);
  await taken.fill(given);
  await taken.press('Enter');
  const history = page.locator('details').filter({ hasText: 'History' });
  await history.locator('summary').click();
  const line = `Count, Bar 1, taken: Cells ${before} → ${given}`;
  await history.getByText(line).waitFor();
  await page.getByRole('heading', { level: 1 }).focus();
  await page.keyboard.press('Control+z');
  await status(page, 'Undone: Counts of 26-01, bar 1.');
  await expect.poll(() => taken.inputValue()).toBe(before);
  await history.getByText(`Count, Bar 1, taken: Cells ${given} → ${before}`).waitFor();
  await history.getByText(line).waitFor();
}

/** Two looks, done, and all of it taken back by one button; the hives and the jobs follow an undo as well. */
async function takeEveningBack(page: Page): Promise<void> {
  await goTo(page, 'Mating boxes', /^Mating boxes$/);
  await page.getByRole('button', { name: 'Type looks' }).first().click();
  const grid = page.getByRole('grid');
  await grid.waitFor();
  const before = await grid.locator('[data-now]').allTextContents();
  await page.keyboard.press('d');
  await page.keyboard.press('d');
  await expect.poll(() => grid.locator('[data-saved="saved"]').count()).toBeGreaterThan(1);
  await page.keyboard.press('Control+Enter');
  await page.getByRole('button', { name: 'Undo all' }).click();
  await page.getByText('2 changes taken back. Ctrl+Y does them again, one at a time.').waitFor();
  await expect.poll(() => grid.locator('[data-now]').allTextContents()).toEqual(before);
}

async function takeHiveLookBack(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.location.hash = '/hives/looks';
  });
  const note = page.getByLabel('H02, What I saw');
  await note.fill('calm');
  await note.press('Enter');
  await page.getByRole('button', { name: 'Undo: Look into H02' }).click();
  await status(page, 'Undone: Look into H02.');
  await expect.poll(() => note.inputValue()).toBe('');
}

async function readHistory(page: Page): Promise<void> {
  await goTo(page, 'History', /^History$/);
  const table = page.getByRole('table', { name: 'History' });
  const lines = async () => (await table.getByRole('rowheader').allTextContents()).slice(0, 3);
  await expect
    .poll(lines)
    .toEqual(['Undone: Counts of 26-01, bar 1', 'Counts of 26-01, bar 1', 'Undone: K02 no queen']);
  await page.getByRole('button', { name: 'Undo from here on: K01 laying' }).click();
  await expect
    .poll(async () => (await table.getByRole('rowheader').first().textContent()) ?? '')
    .toBe('Undone: K01 laying');
  await expect.poll(() => page.getByRole('button', { name: /^Undo: / }).count()).toBe(0);
}

test.each(doors)(
  'what was typed is taken back and done again, in the $name',
  async ({ name, open }) => {
    const house = await open();
    const { page } = house;
    await openDemo(house);
    // The made-up yard itself is not taken back.
    await page.keyboard.press('Control+z');
    await page.getByRole('alert').filter({ hasText: 'Nothing to undo' }).waitFor();
    await typeAndTakeBack(page);
    await correctCounts(page);
    await readHistory(page);
    await takeEveningBack(page);
    await takeHiveLookBack(page);
    if (name.startsWith('Electron')) await takeBackByMenu(page);
    expect(house.problems).toEqual([]);
  },
  180_000,
);

interface Entry {
  readonly id?: string;
  readonly submenu?: readonly Entry[];
  readonly click: () => void;
}

async function takeBackByMenu(page: Page): Promise<void> {
  const entries = ((log.menus[0]?.template ?? []) as readonly Entry[]).flatMap((menu) => menu.submenu ?? []);
  const choose = (id: string) => entries.find((entry) => entry.id === id)?.click();
  choose('redo');
  await status(page, 'Done again: Look into H02.');
  choose('undo');
  await status(page, 'Undone: Look into H02.');
}
