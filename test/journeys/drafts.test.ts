// Half-typed rows, notes and forms are there again after the page was left, and after it was loaded anew as after a crash.
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { doors, launchBrowser, setDay } from './doors.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
}, 600_000);
afterAll(async () => {
  await browser?.close();
  vi.useRealTimers();
});

test('what was typed and not saved is found again, and is gone once it is saved', async () => {
  setDay('2026-05-04');
  const house = await doors(() => browser)[0]?.open();
  if (!house) throw new Error('no door');
  try {
    const { page } = house;
    await page.getByRole('button', { name: 'Begin my workbook' }).click();
    await page.getByRole('heading', { name: 'Today' }).waitFor();
    await page.keyboard.press('Control+n');
    const cells = page.getByLabel('Cells', { exact: true });
    await cells.fill('24');
    await page.getByRole('link', { name: 'Today' }).click();
    await page.getByRole('heading', { name: 'Today' }).waitFor();
    await page.keyboard.press('Control+n');
    await page.getByText('Typed before and not saved yet.').waitFor();
    expect(await cells.inputValue()).toBe('24');
    await page.getByRole('button', { name: 'Start the batch' }).click();
    await page.getByRole('heading', { name: /^26-01/ }).waitFor();

    await page.getByLabel('Note', { exact: true }).fill('windy, all in th');
    await expect.poll(async () => (await draftKeys(page)).join()).toMatch(/^batch-note:/);
    await page.reload();
    await page.getByText('Typed before and not saved yet.').waitFor();
    expect(await page.getByLabel('Note', { exact: true }).inputValue()).toBe('windy, all in th');
    await page.getByRole('button', { name: 'Save notes' }).click();
    await page.getByText('Typed before and not saved yet.').waitFor({ state: 'detached' });
    await page.reload();
    await page.getByLabel('Note', { exact: true }).waitFor();
    expect(await page.getByText('Typed before and not saved yet.').count()).toBe(0);
    expect(house.problems).toEqual([]);
  } finally {
    await house.close();
  }
}, 60_000);

/** As the core has them. */
function draftKeys(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const headers = { 'content-type': 'application/json' };
    const body = JSON.stringify({ kind: 'query', path: 'drafts.listDrafts' });
    const reply = await (await fetch('/call', { method: 'POST', headers, body })).json();
    return Object.keys(reply.data);
  });
}
