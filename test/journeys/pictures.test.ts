// The stream and the compared shares against kept pictures, in light, in dark and without colour; and, when asked for
// (RIPECELL_RETAKE=1 npm test -- pictures), all kept pictures taken anew, those of every page for the documentation too.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright';
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { pagesOf, type Shown, show } from './pages.ts';
import { pictureDifference } from './picture-difference.ts';

const PICTURES = join(import.meta.dirname, '../golden/pictures');
const RETAKE = process.env.RIPECELL_RETAKE === '1';

/**
 * Share of the points that may look different. Letters are smoothed a little differently by each version of Chromium; a
 * band, a dot or a word in another place is more than this.
 */
const TOLERANCE = 0.01;
const MODES = ['light', 'dark', 'grey'] as const;
type Mode = (typeof MODES)[number];

let pages: readonly Shown[];
const house = prepareHouse(
  DEMO_DAY,
  async (opened) => {
    opened.page.setDefaultTimeout(90_000);
    await openDemo(opened);
    pages = await pagesOf(opened.page);
  },
  { deviceScaleFactor: 1 },
);

/** Without colour stands for paper from a black-and-white printer, on the light page. */
async function wear(page: Page, mode: Mode): Promise<void> {
  await page.emulateMedia({ colorScheme: mode === 'dark' ? 'dark' : 'light', reducedMotion: 'reduce' });
  await page.evaluate(
    (filter) => {
      document.documentElement.style.filter = filter;
    },
    mode === 'grey' ? 'grayscale(1)' : '',
  );
}

const CHARTS: readonly (readonly [name: string, of: (page: Page) => Promise<Locator>])[] = [
  [
    'stream',
    async (page) => {
      await show(page, pages.find(([title]) => title === '25-06')?.[1] ?? '');
      return page.getByRole('img', { name: /^The stream/ }).first();
    },
  ],
  [
    'compare',
    async (page) => {
      await show(page, '/season');
      const chart = page.locator('.recharts-surface').first();
      await chart.waitFor();
      // The dots stand on the pooled share first, and on the weighed one once it is reckoned.
      await page.locator('figcaption', { hasNotText: 'Weighing the batches…' }).first().waitFor();
      return chart;
    },
  ],
];

test.each(CHARTS)(
  'the picture of the %s looks as it was kept, in light, dark and grey',
  async (name, find) => {
    const { page } = house();
    for (const mode of MODES) {
      await wear(page, mode);
      const chart = await find(page);
      const taken = await chart.screenshot({ animations: 'disabled' });
      const file = join(PICTURES, 'charts', `${name}-${mode}.png`);
      if (RETAKE || !existsSync(file)) {
        mkdirSync(join(PICTURES, 'charts'), { recursive: true });
        writeFileSync(file, taken);
        if (!RETAKE) expect.fail(`${file} was missing and has been taken: look at it and run again.`);
      }
      const difference = await pictureDifference(page, readFileSync(file), taken);
      expect(difference, `${name}, ${mode}: share of points that differ`).toBeLessThanOrEqual(TOLERANCE);
    }
    await wear(page, 'light');
  },
  120_000,
);

/** "Type looks at hives" is type-looks-at-hives; pages of one title are told apart by their address. */
const fileNameOf = ([title, address]: Shown): string =>
  `${title} ${/tab=(\w+)/.exec(address)?.[1] ?? /^\/(\w+)\/feeding/.exec(address)?.[1] ?? (/box=/.test(address) ? 'one' : '')}`
    .trim()
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-');

test.runIf(RETAKE)(
  'every page is photographed in light and dark',
  async () => {
    const context = await house()
      .page.context()
      .browser()
      ?.newContext({
        viewport: { width: 1366, height: 768 },
        deviceScaleFactor: 0.6,
        reducedMotion: 'reduce',
        locale: 'en-GB',
        storageState: await house().page.context().storageState(),
      });
    if (!context) throw new Error('no browser');
    const page = await context.newPage();
    await page.goto(house().page.url());
    await page.locator('main h1').waitFor();
    for (const mode of ['light', 'dark'] as const) {
      mkdirSync(join(PICTURES, mode), { recursive: true });
      await wear(page, mode);
      for (const shown of pages) {
        await show(page, shown[1]);
        if (shown[1] === '/season') await page.locator('.recharts-surface').first().waitFor();
        if (shown[1].endsWith('tab=queens')) await page.locator('.way').waitFor({ timeout: 60_000 });
        await page.screenshot({ path: join(PICTURES, mode, `${fileNameOf(shown)}.png`), animations: 'disabled' });
      }
    }
    await context.close();
    await wear(house().page, 'light');
    for (const [name, address] of [
      ['today', '/today'],
      ['batch', pages.find(([title]) => title === '25-06')?.[1] ?? ''],
      ['season', '/season'],
    ] as const) {
      await show(house().page, address);
      if (name === 'season') await house().page.locator('.recharts-surface').first().waitFor();
      await house().page.screenshot({ path: join(PICTURES, `${name}.png`), animations: 'disabled' });
    }
  },
  600_000,
);
