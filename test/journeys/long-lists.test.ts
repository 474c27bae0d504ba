// Lists without pages: a thousand boxes and queens, of which only the rows in the window are drawn.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { aStart } from '../builders/running-batch.ts';
import { prepareDoors } from './doors.ts';
import { ask, beginWorkbook } from './own-yard.ts';
import { turnTo } from './pages.ts';

const { open } = prepareDoors('2026-05-14');

async function addBoxes(page: Page): Promise<void> {
  for (let letter = 0; letter < 10; letter += 1) {
    const name = String.fromCharCode('A'.charCodeAt(0) + letter);
    const ids = Array.from({ length: 100 }, (_, index) => `box-${name}-${index}`);
    const boxes = { codes: `${name}001-${name}100`, yardId: null, row: null, boxType: 'mini' };
    await ask(page, 'mutation', 'boxes.addBoxes', { ...boxes, ids });
  }
}

const rowsDrawn = (page: Page) => page.locator('table.plain tbody tr[data-index]').count();

test('a thousand boxes are one board and one list: the end is reached, counted, steady, and whole on paper', async () => {
  const house = await open();
  const { page } = house;
  await beginWorkbook(page, 'Many boxes');
  await addBoxes(page);
  await turnTo(page, 4);
  const tiles = page.locator('.tile');
  for (const board of ['state', 'place']) {
    await page.getByLabel('Shown', { exact: true }).selectOption(board);
    const first = page.locator('.tile', { hasText: 'A001' });
    await page.evaluate(() => window.scrollTo(0, 0));
    await first.focus();
    await expect.poll(() => tiles.count(), { message: board }).toBeLessThan(200);
    // Tab goes from tile to tile: the next one is always drawn.
    for (let step = 0; step < 30; step += 1) {
      await page.keyboard.press('Tab');
      await page.waitForTimeout(33);
    }
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent), { message: board })
      .toMatch(/^A031/);
    await page.emulateMedia({ media: 'print' });
    await expect.poll(() => tiles.count(), { message: board }).toBe(1000);
    await page.emulateMedia({ media: 'screen' });
    await expect.poll(() => tiles.count(), { message: board }).toBeLessThan(200);
  }
  await page.getByLabel('Shown', { exact: true }).selectOption('list');
  await page.getByRole('button', { name: 'A001', exact: true }).waitFor();
  const table = page.getByRole('grid', { name: 'Mating boxes' });
  await expect.poll(() => table.getAttribute('aria-rowcount')).toBe('1001');
  expect(await rowsDrawn(page)).toBeLessThan(40);
  const before = await table.boundingBox();

  // Rows are measured as they appear, so the end may move by a little until the last is there.
  const last = page.getByRole('button', { name: 'J100', exact: true });
  const lastRow = page.locator('tr[aria-rowindex="1001"]');
  await expect
    .poll(async () => {
      await table.evaluate((element) => element.scrollIntoView({ block: 'end' }));
      return lastRow.count();
    })
    .toBe(1);
  await last.waitFor();
  expect(await rowsDrawn(page)).toBeLessThan(40);
  const after = await table.boundingBox();
  expect(after?.width).toBe(before?.width);
  // Heights are estimated until a row is drawn; the scroll bar must not jump for it.
  expect((after?.height ?? 0) / (before?.height ?? 1)).toBeCloseTo(1, 2);

  // The list can be walked by Tab from row to row: the next one is always drawn.
  await last.focus();
  // As fast as a key repeats when it is held down: about thirty times a second on the usual settings (from memory).
  for (let step = 0; step < 30; step += 1) {
    await page.keyboard.press('Shift+Tab');
    await page.waitForTimeout(33);
  }
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('J070');

  await page.emulateMedia({ media: 'print' });
  await expect.poll(() => page.locator('table.plain tbody tr').count()).toBe(1000);
  expect(house.problems).toEqual([]);
}, 180_000);

test('a sheet of looks of a thousand boxes is typed at any place of it', async () => {
  const house = await open();
  const { page } = house;
  await beginWorkbook(page, 'Many looks');
  await addBoxes(page);
  const start = aStart({ id: 'batch-1', anchorOn: '2026-05-04', cellsPlanned: 180 });
  await ask(page, 'mutation', 'batches.startBatch', start);
  const codes = ['A001-A100', 'B001-B080'];
  for (const [index, boxes] of codes.entries()) {
    const ids = Array.from({ length: 100 - index * 20 }, (_, cell) => `placement-${index}-${cell}`);
    const cells = { batchId: 'batch-1', boxes, placedOn: '2026-05-14', barId: null };
    await ask(page, 'mutation', 'boxes.placeCells', { ...cells, ids });
  }
  await page.keyboard.press('Control+e');
  await page.locator('[data-now]:focus').waitFor();
  await expect.poll(() => page.locator('tr[data-row]').count()).toBeLessThan(40);
  const current = () => page.locator('tr.current th').innerText();
  await page.keyboard.press('.');
  await page.keyboard.press('End');
  await expect.poll(current).toBe('B080');
  await page.locator('tr.current [data-now]:focus').waitFor();
  await page.keyboard.press('.');
  await page.keyboard.type('/b40', { delay: 80 });
  await page.keyboard.press('Enter');
  await expect.poll(current).toBe('B040');
  await page.locator('tr.current [data-now]:focus').waitFor();
  for (let row = 0; row < 30; row += 1) await page.keyboard.press('.');
  await expect.poll(current).toBe('B070');
  await page.getByText('B069 not looked. 32 of 180.').waitFor();
  await feedInALongSheet(page);
  expect(house.problems).toEqual([]);
}, 180_000);

/** Only what is in the window is drawn; the next row is always at hand; what was typed and scrolled away is saved. */
async function feedInALongSheet(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.location.hash = '/boxes/feeding';
  });
  await page.locator('input[data-now]:focus').waitFor();
  await expect.poll(() => page.locator('tr[data-row]').count()).toBeLessThan(40);
  for (let row = 1; row <= 40; row += 1) {
    await page.keyboard.type('0.3');
    await page.keyboard.press('Enter');
    await page
      .getByLabel(`A${String(row + 1).padStart(3, '0')}, How much`)
      .and(page.locator(':focus'))
      .waitFor();
  }
  await page.getByText('40 of 1000').waitFor();
  await page.keyboard.type('0.5');
  await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
  await page.getByText('J100', { exact: true }).waitFor();
  await page.getByText('41 of 1000').waitFor();
  await page.evaluate(() => window.scrollTo(0, 0));
  await page.getByText('A001', { exact: true }).waitFor();
  await expect.poll(() => page.locator('tr[data-row]').count()).toBeLessThan(40);
}
