// Every view on the demo, in light and dark and both densities: no accessibility violation (axe-core, WCAG 2.2 A and AA
// rules), no console error, no sideways scroll at 200 % zoom of a 1366 x 768 screen (683 CSS pixels; WCAG 2.2, 1.4.10)
// outside tables; all of it reached by Tab alone with the focus in sight (2.1.1, 2.1.2, 2.4.7, 2.4.11); and on paper.
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { doors, launchBrowser, type OpenDoor, setDay } from './doors.ts';
import { axeTroubles, pagesOf, type Shown } from './pages.ts';
import { readPaper } from './read-paper.ts';
import { walkByTab } from './walk-by-tab.ts';

let browser: Browser;
let house: OpenDoor;
let views: readonly Shown[];

beforeAll(async () => {
  setDay('2026-06-01');
  browser = await launchBrowser();
  const loopback = doors(() => browser)[0];
  if (!loopback) throw new Error('no loopback door');
  house = await loopback.open();
  await house.page.getByRole('button', { name: 'Look at the demo' }).click();
  await house.page.getByRole('heading', { name: 'Today' }).waitFor({ timeout: 30_000 });
  views = await pagesOf(house.page);
}, 600_000);

afterAll(async () => {
  await house?.close();
  await browser?.close();
  vi.useRealTimers();
});

async function goTo(page: Page, [title, address]: Shown): Promise<void> {
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, address);
  await page.getByRole('heading', { level: 1, name: title }).waitFor();
  if (address === '/season') await page.locator('.recharts-surface').waitFor();
  if (address.endsWith('tab=queens')) await page.locator('.way').waitFor({ timeout: 60_000 });
}

/** Each theme and each density once; all four pairs in the long form (RIPECELL_LONG=1). */
const LOOKS = [
  ['light', 'comfortable'],
  ['dark', 'compact'],
  ...(process.env.RIPECELL_LONG
    ? ([
        ['light', 'compact'],
        ['dark', 'comfortable'],
      ] as const)
    : []),
] as const;

test.each(LOOKS)(
  'every view is free of axe violations in %s, %s',
  async (colorScheme, density) => {
    await house.page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await chooseDensity(house.page, density);
    const found: string[] = [];
    for (const view of views) {
      await goTo(house.page, view);
      found.push(...(await axeTroubles(house.page, view[0])));
    }
    expect(found).toEqual([]);
    expect(house.problems).toEqual([]);
  },
  240_000,
);

/** By the page itself, so that its frame takes the choice up. */
async function chooseDensity(page: Page, density: 'comfortable' | 'compact'): Promise<void> {
  await goTo(page, ['Settings', '/settings']);
  await page.getByLabel('Rows', { exact: true }).selectOption(density);
  await page.waitForFunction((chosen) => document.documentElement.dataset.density === chosen, density);
}

test('every view is walked by Tab alone, and the focus is always in sight', async () => {
  await house.page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  const found: string[] = [];
  for (const view of views) {
    await goTo(house.page, view);
    found.push(...(await walkByTab(house.page)).map((problem) => `${view[0]}: ${problem}`));
  }
  expect(found).toEqual([]);
}, 240_000);

test('every view can be printed: black on white, without what is pressed, on the width of a page', async () => {
  const { page } = house;
  await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
  // ISO 216 A4 is 210 mm wide; within margins of 14 mm that is 688 CSS pixels of 1/96 inch.
  await page.setViewportSize({ width: 688, height: 970 });
  const found: string[] = [];
  for (const view of views) {
    await goTo(page, view);
    found.push(...(await page.evaluate(readPaper)).map((problem) => `${view[0]}: ${problem}`));
  }
  expect(found).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light', media: 'screen', reducedMotion: 'reduce' });
}, 120_000);

test('no view scrolls sideways at 200 % zoom', async () => {
  await house.page.setViewportSize({ width: 683, height: 384 });
  const wide: string[] = [];
  for (const view of views) {
    await goTo(house.page, view);
    const over = await house.page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    if (over > 0) wide.push(`${view[0]} by ${over}px`);
  }
  expect(wide).toEqual([]);
}, 120_000);

// The pages drawn are compared with the number the file has; arrow keys turn them.
test('a paper is looked at page by page in the window, by key, and closed again', async () => {
  const { page, problems } = house;
  await goTo(page, ['Class', '/class']);
  await page.getByRole('button', { name: 'Look at it' }).first().click();
  const dialog = page.getByRole('dialog');
  const picture = dialog.getByRole('img');
  await dialog.getByText('page 1 of 2', { exact: true }).waitFor();
  await vi.waitFor(async () => expect(await picture.getAttribute('aria-label')).toContain('Begin feeding'), 30_000);
  const inked = () =>
    picture.evaluate((canvas) => {
      const { width, height } = canvas as HTMLCanvasElement;
      // Read from a copy that is made for reading, or the browser warns on the console.
      const copy = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
      copy?.drawImage(canvas as HTMLCanvasElement, 0, 0);
      const dots = copy?.getImageData(0, 0, width, height).data ?? [];
      let dark = 0;
      for (let at = 0; at < dots.length; at += 4) if ((dots[at] ?? 255) < 128) dark += 1;
      return { dark, shape: width / height };
    });
  const first = await inked();
  // ISO 216 A4 lying; letters and rules cover a few parts of a hundred.
  expect(first.shape).toBeCloseTo(297 / 210, 2);
  expect(first.dark).toBeGreaterThan(10_000);
  expect(await axeTroubles(page, 'a paper looked at')).toEqual([]);
  await page.keyboard.press('ArrowRight');
  await dialog.getByText('page 2 of 2', { exact: true }).waitFor();
  await vi.waitFor(async () => expect(await picture.getAttribute('aria-label')).toContain('Queens emerge'), 30_000);
  expect((await inked()).dark).not.toBe(first.dark);
  await page.keyboard.press('Home');
  await dialog.getByText('page 1 of 2', { exact: true }).waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'hidden' });
  expect(problems).toEqual([]);
}, 120_000);
