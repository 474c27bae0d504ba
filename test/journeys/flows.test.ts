// The evening's flows with their keys counted against the figures they were designed to. One workbook goes through a
// season; where a flow begins "on the job", the job has the focus and Enter is the first key counted.
import type { Page } from 'playwright';
import { beforeEach, expect, test } from 'vitest';
import { prepareHouse } from './doors.ts';
import { type CountedKeys, countKeys, secondsOfKeys } from './key-counter.ts';
import * as yard from './own-yard.ts';
import { turnTo } from './pages.ts';

let page: Page;
let keys: CountedKeys;
const house = prepareHouse(yard.LARVAE_ON, async (opened) => {
  page = opened.page;
  keys = countKeys(page);
  await yard.beginYard(page, yard.LARVAE_ON);
  await yard.beginBatch(page);
  await yard.comeBackOn(page, yard.COUNTED_ON);
});
beforeEach(() => keys.start());

/** The job's button has the focus; that is where the flow begins. */
async function standOn(job: string): Promise<void> {
  await turnTo(page, 1);
  await page.getByRole('listitem').filter({ hasText: job }).getByRole('button').first().focus();
}
const heading = (name: string | RegExp) => page.getByRole('heading', { level: 1, name }).waitFor();
const focused = (selector: string) => page.locator(`${selector}:focus`).waitFor();

test('F4: cells on three bars are counted with at most 11 keys', async () => {
  await standOn('Count the cells taken');
  await keys.press('Enter');
  await focused('[data-stage="taken"]');
  for (const taken of ['14', '13', '15']) {
    await keys.type(taken);
    await keys.press('Enter');
  }
  await keys.press('Control+Enter');
  await page.getByText('Counts saved.').waitFor();
  await page.getByRole('row', { name: /^all/ }).getByText('42', { exact: true }).waitFor();
  expect(keys.count).toBeLessThanOrEqual(11);
});

test('F5: a slip is reported with at most 6 keys', async () => {
  await keys.press('Control+r');
  await focused('select');
  await keys.press('Tab');
  await keys.type('+1');
  await keys.press('Enter');
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  await dialog.getByRole('button', { name: 'Save, and let the days move' }).and(page.locator(':focus')).waitFor();
  await keys.press('Enter');
  await page.getByRole('listitem').filter({ hasText: 'Wed 6 May' }).waitFor();
  expect(keys.count).toBeLessThanOrEqual(6);
});

test('F6: 18 cells go into 18 boxes with at most 12 keys', async () => {
  await page.getByRole('listitem').filter({ hasText: 'Wed 6 May' }).getByRole('button', { name: 'Take back' }).click();
  await page.getByRole('button', { name: 'Save, and let the days move' }).click();
  await page.getByText('Nothing noted; the days are reckoned from day 0.').waitFor();
  await yard.countBars(page);
  await yard.comeBackOn(page, yard.PLACED_ON);
  await keys.press('Control+b');
  await focused('input');
  await keys.type('K01-K18');
  await keys.press('Enter');
  await page.getByText('18 cells put in boxes.').waitFor();
  expect(keys.count).toBeLessThanOrEqual(12);
});

test('F7: their labels are printed with 3 keys, the system window the third', async () => {
  await keys.press('Control+l');
  await page.getByRole('button', { name: 'Save as PDF' }).and(page.locator(':focus')).waitFor();
  const pdf = await house().saveFile(() => keys.press('Enter'));
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  // The third key confirms the system's own window.
  expect(keys.count).toBeLessThanOrEqual(2);
});

test('F8: the yard sheet for tomorrow with 3 keys', async () => {
  await keys.press('Control+1', 'Control+p');
  await page.getByRole('button', { name: 'Yard sheet for tomorrow' }).and(page.locator(':focus')).waitFor();
  const [sheet] = await Promise.all([page.waitForEvent('popup'), keys.press('Enter')]);
  expect(sheet.url()).toMatch(/^blob:/);
  await page.getByText('2 pages are ready.').waitFor();
  expect(keys.count).toBeLessThanOrEqual(3);
  await page.keyboard.press('Escape');
});

test('F1: 30 looks with 10 marks and 3 notes take at most 120 keys and three minutes', async () => {
  await yard.placeCells(page, 'K19-K30', 12);
  await yard.comeBackOn(page, yard.LOOKED_ON);
  await standOn('First look for eggs');
  await keys.press('Enter');
  await focused('[data-now]');
  for (let box = 1; box <= 30; box += 1) {
    await keys.press(...(box <= 10 ? ['Shift+L', 'Enter'] : [box % 7 === 0 ? 'v' : 'l']));
    if ([12, 20, 27].includes(box)) {
      await keys.press('ArrowUp', 'F4');
      await keys.type('ants on rim.');
      await keys.press('Enter');
    }
  }
  await keys.press('Control+Enter');
  await page.getByText(/^30 looks saved: 27 laying, 3 virgin\./).waitFor();
  expect(keys.count).toBeLessThanOrEqual(120);
  // One thought a box, to find the ring on the sheet.
  expect(secondsOfKeys(keys.count, 30)).toBeLessThanOrEqual(180);
  await expect.poll(() => page.getByLabel('K27, Note').inputValue()).toBe('ants on rim.');
  await page.getByRole('row', { name: /^K10/ }).getByText('26-010').waitFor();
});

test('F2: one of them is corrected with at most 4 keys', async () => {
  await keys.press('ArrowUp', 'ArrowUp', 'n');
  await page.getByRole('button', { name: 'K28, no queen' }).waitFor();
  expect(keys.count).toBeLessThanOrEqual(4);
});

test('F1, plain: 30 looks take 32 keys', async () => {
  await page.evaluate(() => {
    window.location.hash = '/boxes/looks';
  });
  await page.getByLabel('Sheet day').fill('29 May');
  await page.getByText('0 of 30').waitFor();
  await focused('[data-now]');
  await keys.press(...Array.from({ length: 30 }, () => 'l'), 'Control+Enter');
  await page.getByText(/^30 looks saved: 30 laying\./).waitFor();
  // Enter on the job is the 32nd.
  expect(keys.count + 1).toBe(32);
});

test('F3: a batch is started with at most 16 keys, in less than 40 seconds by the keystroke-level model', async () => {
  await keys.press('Control+n');
  await focused('select');
  await keys.type('la');
  await keys.press('Enter');
  await keys.type('an');
  await keys.press('Enter');
  await keys.type('12');
  await keys.press('Enter', 'Enter', 'Enter');
  await keys.type('60');
  await keys.press('Control+Enter');
  await heading(/26-02 Larva grafting/);
  await page.getByText('from H03 Anna, builder H12').waitFor();
  expect(keys.count).toBeLessThanOrEqual(16);
  // One thought before each of the six fields and before the start.
  expect(secondsOfKeys(keys.count, 7)).toBeLessThanOrEqual(40);
});

test('F9: anything is found with at most 6 keys', async () => {
  await keys.press('Control+k');
  await keys.type('k17');
  await keys.press('Enter');
  await heading('Mating boxes');
  await page.getByRole('heading', { level: 2, name: /K17/ }).waitFor();
  expect(keys.count).toBeLessThanOrEqual(6);
});

test('F11: two methods are compared, this year against last, with at most 5 keys', async () => {
  await keys.press('Control+6');
  await focused('select');
  await keys.press('Tab');
  await keys.type('se');
  await expect.poll(() => page.locator('select:focus').inputValue()).toBe('season');
  expect(keys.count).toBeLessThanOrEqual(5);
});

test('nothing went wrong on the way', () => {
  expect(house().problems).toEqual([]);
});
