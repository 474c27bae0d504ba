// Anything typed into any field breaks no page and loses no row: every text field of the pages for typing gets texts no
// form expects, drawn by fast-check from a fixed seed and from the usual list of troublesome ones.
import fc from 'fast-check';
import type { Browser, Locator, Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { doors, launchBrowser, setDay } from './doors.ts';

let browser: Browser;
beforeAll(async () => {
  setDay('2026-06-01');
  browser = await launchBrowser();
}, 600_000);
afterAll(async () => {
  await browser?.close();
  vi.useRealTimers();
});

const PAGES = [
  '/today/steps',
  '/hives/looks',
  '/boxes/looks',
  '/batches/new',
  '/hives',
  '/boxes',
  '/settings',
  '/print',
  '/help',
];

/** Signs, numbers out of range, other scripts, markup, formulas; then whatever the generator finds. */
const TEXTS: readonly string[] = [
  '-1',
  '1e9',
  '٣',
  '∞',
  '<b onclick=alert(1)>',
  "'; DROP TABLE batch; --",
  '=1+1',
  '\u202Eabc',
  '👑'.repeat(40),
  'x'.repeat(3000),
  ...fc.sample(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }), { numRuns: 10, seed: 20260601 }),
];

/** Types into one field and leaves it; what is wrong with the page afterwards, or nothing. */
async function troubleWith(page: Page, field: Locator, text: string): Promise<string | null> {
  const label = await field.evaluate(
    (input: HTMLInputElement) => input.labels?.[0]?.textContent ?? input.ariaLabel ?? '',
  );
  await field.fill(text);
  await field.blur();
  await page.waitForTimeout(30);
  if (await page.getByText('This page failed.').count()) return `${label}: “${text.slice(0, 20)}” broke the page`;
  // The field may be drawn anew with what was saved; it must still be there under its name.
  const still = page.getByLabel(label, { exact: true });
  return (await still.count()) > 0 ? null : `${label}: “${text.slice(0, 20)}” took its row away`;
}

test('no text breaks a page or takes a row away', async () => {
  const house = await doors(() => browser)[0]?.open();
  if (!house) throw new Error('no door');
  try {
    const { page } = house;
    await page.getByRole('button', { name: 'Look at the demo' }).click();
    await page.getByRole('heading', { name: 'Today' }).waitFor({ timeout: 60_000 });
    const found: string[] = [];
    let turn = 0;
    for (const address of PAGES) {
      await page.evaluate((hash) => {
        window.location.hash = hash;
      }, address);
      await page.locator('main h1').waitFor();
      await page.waitForTimeout(500);
      const marks = await page.evaluate(markFields);
      for (const mark of marks) {
        const text = TEXTS[turn % TEXTS.length] ?? '';
        turn += 1;
        const field = page.locator(`[data-field="${mark}"]`);
        const trouble = (await field.count()) === 0 ? `field ${mark} is gone` : await troubleWith(page, field, text);
        if (trouble) found.push(`${address}: ${trouble}`);
      }
    }
    expect(turn).toBeGreaterThan(60);
    expect(found).toEqual([]);
    expect(house.problems.filter((problem) => !/Failed to load resource/.test(problem))).toEqual([]);
  } finally {
    await house.close();
  }
}, 180_000);

/** Gives every text field of the page a mark, so that it can be found again whatever is drawn anew around it. */
function markFields(): readonly string[] {
  const fields = [...document.querySelectorAll<HTMLInputElement>('main input, main textarea')].filter(
    (input) => !['checkbox', 'radio', 'file'].includes(input.type) && !input.disabled && input.checkVisibility(),
  );
  for (const [index, field] of fields.slice(0, 40).entries()) field.dataset.field = String(index);
  return fields.slice(0, 40).map((field) => field.dataset.field ?? '');
}
