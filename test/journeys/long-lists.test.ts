// Lists without pages: a thousand boxes and queens, of which only the rows in the window are drawn.
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { doors, launchBrowser, setDay } from './doors.ts';
import { ask } from './own-yard.ts';

let browser: Browser;
beforeAll(async () => {
  setDay('2026-05-14');
  browser = await launchBrowser();
}, 600_000);
afterAll(async () => {
  await browser?.close();
  vi.useRealTimers();
});

async function addBoxes(page: Page): Promise<void> {
  for (let letter = 0; letter < 10; letter += 1) {
    const name = String.fromCharCode('A'.charCodeAt(0) + letter);
    const ids = Array.from({ length: 100 }, (_, index) => `box-${name}-${index}`);
    const boxes = { codes: `${name}001-${name}100`, yardId: null, row: null, boxType: 'mini' };
    await ask(page, 'mutation', 'boxes.addBoxes', { ...boxes, ids });
  }
}

const rowsDrawn = (page: Page) => page.locator('table.plain tbody tr[data-index]').count();

test('a thousand boxes are one list: the end is reached, counted, steady, and whole on paper', async () => {
  const house = await doors(() => browser)[0]?.open();
  if (!house) throw new Error('no door');
  try {
    const { page } = house;
    await page.getByLabel('Name', { exact: true }).fill('Many boxes');
    await page.getByRole('button', { name: 'Begin my workbook' }).click();
    await page.getByRole('heading', { name: 'Today' }).waitFor();
    await addBoxes(page);
    await page.keyboard.press('Control+4');
    await page.getByLabel('Shown', { exact: true }).selectOption('list');
    await page.getByRole('button', { name: 'A001', exact: true }).waitFor();
    const table = page.getByRole('table', { name: 'Mating boxes' });
    expect(await table.getAttribute('aria-rowcount')).toBe('1001');
    expect(await rowsDrawn(page)).toBeLessThan(40);
    const before = await table.boundingBox();

    await page.keyboard.press('End');
    await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
    const last = page.getByRole('button', { name: 'J100', exact: true });
    await last.waitFor();
    expect(await page.locator('tr[aria-rowindex="1001"]').count()).toBe(1);
    expect(await rowsDrawn(page)).toBeLessThan(40);
    const after = await table.boundingBox();
    expect(after?.width).toBe(before?.width);
    // Heights are estimated until a row is drawn; the scroll bar must not jump for it.
    expect((after?.height ?? 0) / (before?.height ?? 1)).toBeCloseTo(1, 2);

    // The list can be walked by Tab from row to row: the next one is always drawn.
    await last.focus();
    for (let step = 0; step < 30; step += 1) await page.keyboard.press('Shift+Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('J070');

    await page.emulateMedia({ media: 'print' });
    await expect.poll(() => page.locator('table.plain tbody tr').count()).toBe(1000);
    expect(house.problems).toEqual([]);
  } finally {
    await house.close();
  }
}, 90_000);
