import type { Page } from 'playwright';
import { expect, test, vi } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { axeTroubles, choose, LOOKS, PLAIN, pagesOf, type Shown, show, sideways } from './pages.ts';
import { readPaper } from './read-paper.ts';
import { walkByTab } from './walk-by-tab.ts';

let views: readonly Shown[];
const house = prepareHouse(DEMO_DAY, async (opened) => {
  await openDemo(opened);
  views = await pagesOf(opened.page);
});

/** A window of 1366 by 768 at 200 %. */
const ZOOMED = { media: 'screen', colorScheme: 'light', width: 683, height: 384 } as const;
/** ISO 216 A4 is 210 mm wide; within margins of 14 mm that is 688 CSS pixels of 1/96 inch. Printed from a dark page. */
const PAPER = { media: 'print', colorScheme: 'dark', width: 688, height: 970 } as const;

async function layOut(page: Page, { width, height, ...media }: typeof ZOOMED | typeof PAPER): Promise<void> {
  await page.emulateMedia({ ...media, reducedMotion: 'reduce' });
  await page.setViewportSize({ width, height });
  // Long lists draw other rows once they have been measured anew.
  await page.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(drawn, 50)))),
  );
}

const LONG = process.env.RIPECELL_LONG === '1';

// In the ordinary run every view is looked at once and the looks take turns; in the long form each in all eight.
test.each(LOOKS.map((look, turn) => ({ ...look, turn })))(
  'views are free of axe violations and scroll nowhere sideways: $language, $theme, $density',
  async ({ turn, ...look }) => {
    const { page, problems } = house();
    await choose(page, look);
    const found: string[] = [];
    for (const [title, address] of views.filter((_view, at) => LONG || at % LOOKS.length === turn)) {
      await show(page, address);
      found.push(...(await axeTroubles(page, `${title} ${address}`)));
      if ((await sideways(page)) > 0) found.push(`${title} ${address}: scrolls sideways`);
    }
    expect(found).toEqual([]);
    expect(problems).toEqual([]);
  },
  LONG ? 900_000 : 240_000,
);

test('every view is walked by Tab alone, and the focus is always in sight', async () => {
  const { page } = house();
  await choose(page, PLAIN);
  const found: string[] = [];
  for (const [title, address] of views) {
    await show(page, address);
    await expect.poll(() => page.locator('main h1').innerText(), { message: address }).toContain(title);
    found.push(...(await walkByTab(page)).map((problem) => `${title}: ${problem}`));
  }
  expect(found).toEqual([]);
}, 240_000);

// Both are only the same page laid out anew, so each view is opened once for them.
test('every view can be printed, black on white and without what is pressed, and scrolls nowhere sideways at 200 % zoom', async () => {
  const { page } = house();
  const found: string[] = [];
  for (const [title, address] of views) {
    await layOut(page, ZOOMED);
    await show(page, address);
    const over = await sideways(page);
    if (over > 0) found.push(`${title}: scrolls sideways by ${over}px`);
    await layOut(page, PAPER);
    found.push(...(await page.evaluate(readPaper)).map((problem) => `${title}: ${problem}`));
  }
  expect(found).toEqual([]);
  await layOut(page, ZOOMED);
}, 240_000);

// The pages drawn are compared with the number the file has; arrow keys turn them.
test('a paper is looked at page by page in the window, by key, and closed again', async () => {
  const { page, problems } = house();
  await show(page, '/class');
  await page.getByRole('button', { name: 'Look at it' }).first().click();
  const dialog = page.getByRole('dialog');
  const picture = dialog.getByRole('img');
  await dialog.getByText('page 1 of 3', { exact: true }).waitFor();
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
  await dialog.getByText('page 2 of 3', { exact: true }).waitFor();
  await vi.waitFor(async () => expect(await picture.getAttribute('aria-label')).toContain('Queens emerge'), 30_000);
  expect((await inked()).dark).not.toBe(first.dark);
  await page.keyboard.press('Home');
  await dialog.getByText('page 1 of 3', { exact: true }).waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'hidden' });
  expect(problems).toEqual([]);
}, 120_000);
