// The evening at the kitchen table, on the demo and by keyboard alone: nine looks with one key each, one queen marked, one
// corrected, one note; saved as typed, there after a reload, and on the page of the batch. Then jobs done, looks at hives
// and counts by bar, in the same manner.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareDoors } from './doors.ts';

const { open } = prepareDoors(DEMO_DAY);

/** The keys of one evening: result keys, Shift+L with Enter on the offered number, F4 with a note. */
async function typeEvening(page: Page): Promise<number> {
  const keys = ['l', 'L', 'Enter', 'v', '5', 'd', 'q', 'l', 'l', '.'];
  for (const key of keys) await page.keyboard.press(key === 'L' ? 'Shift+L' : key);
  return keys.length;
}

/** A scanner types fast and ends with Enter; a hand may type the code as well, without its zeros. */
async function scanAndJump(page: Page): Promise<void> {
  const current = () => page.locator('tr.current th').innerText();
  await page.keyboard.type('K03', { delay: 2 });
  await page.keyboard.press('Enter');
  expect(await current()).toBe('K03');
  await page.keyboard.type('/k6', { delay: 120 });
  await page.getByText('Go to box k6… Enter goes there, Esc leaves.').waitFor();
  await page.keyboard.press('Enter');
  expect(await current()).toBe('K06');
  await page.keyboard.type('K', { delay: 120 });
  await page.keyboard.press('Enter');
  await page.getByText('Box K is not in this list, or more than one begins so.').waitFor();
  // The question before the rest is filled names the rows it would fill, and Escape leaves all as it was.
  await page.keyboard.press('Control+d');
  await page.getByText('Fill 0 untouched rows with “laying”?').waitFor();
  await page.keyboard.press('Escape');
}

test('nine looks are typed, corrected, noted and kept', async () => {
  const house = await open();
  const { page } = house;
  await openDemo(house);
  await page.getByRole('button', { name: 'Type looks' }).waitFor({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Type looks' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('grid').waitFor();
  const row = (box: string) => page.getByRole('row', { name: new RegExp(`^${box} `) });
  await page.getByText('0 of 9').waitFor();
  expect(await typeEvening(page)).toBe(10);
  await page.getByText('K09 not looked. 9 of 9.').waitFor();
  await row('K02').getByText('26-001').waitFor();
  // Up to K08 and another key: corrected in place.
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('n');
  await page.getByText('K08 no queen. 9 of 9.').waitFor();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('F4');
  await page.keyboard.type('ants');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await scanAndJump(page);
  await page.keyboard.press('Control+Enter');
  await page
    .getByText('9 looks saved: 3 laying, 1 virgin, 2 no queen, 1 drone-layer, 1 queen, no eggs, 1 not looked.')
    .waitFor();
  // Every row is in the workbook, and what the evening changed is told.
  await expect.poll(() => page.locator('[data-saved="saved"]').count()).toBe(9);
  await expect.poll(() => page.locator('[data-saved]:not([data-saved="saved"])').count()).toBe(0);
  const end = page.getByRole('status', { name: 'What this changes' });
  await end.getByText('Still to do').waitFor();
  await expect.poll(() => end.innerText()).toMatch(/First look for eggs, 26-01, K03, K06, K09/);

  await page.reload();
  await page.getByRole('grid').waitFor();
  await page.getByRole('button', { name: 'K08, no queen' }).waitFor();
  await expect.poll(() => page.getByLabel('K08, Note').inputValue()).toBe('ants');

  // A strength outside 1 to 5 is refused beside its row, and the text stays.
  await page.getByLabel('K01, Strength').fill('9');
  await page.getByLabel('K01, Strength').press('Enter');
  await page.getByText('Strength, 1 to 5: Type a whole number.').waitFor();
  await expect.poll(() => page.getByLabel('K01, Strength').inputValue()).toBe('9');

  await page.keyboard.press('Control+k');
  await page.keyboard.type('26-01');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: /26-01/ }).waitFor();
  await page.getByRole('row', { name: /K05.*drone-layer/ }).waitFor();
  expect(house.problems).toEqual([]);
}, 90_000);

test('jobs done, looks at hives and counts are typed the same way', async () => {
  const house = await open();
  const { page } = house;
  await openDemo(house);
  await page.getByRole('button', { name: 'Type what was done' }).click({ timeout: 30_000 });
  await typeSteps(page);
  await typeHives(page);
  await typeCounts(page);
  expect(house.problems).toEqual([]);
}, 90_000);

const press = async (page: Page, ...keys: string[]) => {
  for (const key of keys) await page.keyboard.press(key);
};
const saved = (page: Page) => page.locator('[data-saved="saved"]');

/** One job was done yesterday; the last row, where the typing stays, is corrected to not done. Both stay in the grid. */
async function typeSteps(page: Page): Promise<void> {
  await page.locator('[data-now]').first().waitFor();
  await press(page, 'y', '1', '.', 'Control+Enter');
  await page.getByText('1 job done.').waitFor();
  const end = page.getByRole('status', { name: 'What this changes' });
  await end.getByText('Done, or no longer needed').waitFor();
  await expect.poll(() => end.innerText()).toContain('Look for the builder’s own cells, 26-03, H09');
  await expect.poll(() => end.innerText()).not.toContain('Fill the mating boxes');
  await page.getByRole('button', { name: 'Fill the mating boxes with bees, 26-03, not done' }).waitFor();
}

async function typeHives(page: Page): Promise<void> {
  await press(page, 'Control+3');
  await page.getByRole('button', { name: 'Type looks' }).press('Enter');
  await page.getByRole('heading', { name: 'Type looks at hives' }).waitFor();
  await page.getByLabel('H09, Strength').waitFor();
  await press(page, '4', 'Tab', '2', 'F4');
  await page.keyboard.type('calm');
  await press(page, 'Enter', '9', 'Enter');
  // Outside 1 to 5 is refused beside its row, and what was typed stays.
  await page.getByText('Strength, 1 to 5: Type a whole number.').waitFor();
  await expect.poll(() => page.getByLabel('H12, Strength').inputValue()).toBe('9');
  await press(page, 'ArrowUp', 'Control+a', '3', 'Control+Enter');
  await page.getByText('2 looks saved.').waitFor();
  await expect.poll(() => saved(page).count()).toBe(2);
  await page.getByText('hands off until Fri 22 May (26-04)').waitFor();
  await page.reload();
  await page.getByLabel('H09, What I saw').waitFor();
  await expect.poll(() => page.getByLabel('H09, What I saw').inputValue()).toBe('calm');
  await expect.poll(() => page.getByLabel('H12, Strength').inputValue()).toBe('3');
}

async function typeCounts(page: Page): Promise<void> {
  await press(page, 'Control+1');
  await page.getByRole('button', { name: 'Type counts' }).press('Enter');
  await page.getByLabel('bar 1, taken').waitFor();
  await page.getByLabel('bar 1, taken').and(page.locator(':focus')).waitFor();
  await press(page, '7', 'Enter', '8', 'Enter', 'ArrowUp', 'Control+a', '6', 'Control+Enter');
  const end = page.getByRole('status', { name: 'What this changes' });
  await end.getByText('Counts saved.').waitFor();
  await end.getByText(/Count the cells taken, 26-05, H04/).waitFor();
  await expect.poll(() => page.getByLabel('bar 1, taken').inputValue()).toBe('6');
}
