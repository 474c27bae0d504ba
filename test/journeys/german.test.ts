// Pages in German: no accessibility violation with lang="de" (axe-core, WCAG 2.2 A and AA rules, 3.1.1 language of the
// page), nothing that scrolls sideways; in the long form all pages, light and dark, in both densities and both languages
// (RIPECELL_LONG=1 npm test -- german). And in a pseudo-locale, whose sentences are bracketed and 40 % longer (usual
// allowance for translation; W3C, Text size in translation): no view grows sideways, no button is cut, and every visible
// word comes from the catalogue.
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { doors, launchBrowser, type OpenDoor, setDay } from './doors.ts';
import { axeTroubles, pagesOf, type Shown } from './pages.ts';
import { pseudoScript } from './pseudo-locale.ts';

/** Where the most is on a page, and what is typed in the evening; the long form goes through all of them. */
const SAMPLE = ['26-01', 'H04', 'Queen 25-008', 'Type feeding', 'Today', 'Settings'];

let browser: Browser;
let house: OpenDoor;
let pages: readonly Shown[];

beforeAll(async () => {
  setDay('2026-06-01');
  browser = await launchBrowser();
  const loopback = doors(() => browser)[0];
  if (!loopback) throw new Error('no loopback door');
  house = await loopback.open();
  await house.page.getByRole('button', { name: 'Look at the demo' }).click();
  await house.page.getByRole('heading', { name: 'Today' }).waitFor({ timeout: 30_000 });
  pages = await pagesOf(house.page);
}, 600_000);

afterAll(async () => {
  await house?.close();
  await browser?.close();
  vi.useRealTimers();
});

/** By the page itself, as a person does it. */
async function choose(page: Page, { theme, density, language }: Look): Promise<void> {
  await page.emulateMedia({ colorScheme: theme, reducedMotion: 'reduce' });
  await show(page, '/settings');
  const [, , densities, languages] = await page.locator('main select').all();
  await densities?.selectOption(density);
  await page.waitForFunction((chosen) => document.documentElement.dataset.density === chosen, density);
  await languages?.selectOption(language);
  await page.waitForFunction((chosen) => document.documentElement.lang === chosen, language);
}

async function show(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, address);
  await page.locator('main h1').waitFor();
  await page.waitForLoadState('networkidle');
}

/** Every text in an answer of the workbook: names, codes, notes. */
function collectTexts(value: unknown, into: Set<string>): void {
  if (typeof value === 'string' && /\p{L}/u.test(value)) into.add(value);
  else if (typeof value === 'object' && value !== null) for (const one of Object.values(value)) collectTexts(one, into);
}

/** What is left when the data of the workbook and the names of days and months are taken out. */
function withoutData(text: string, data: ReadonlySet<string>): string {
  const calendar = [
    'Montag',
    'Dienstag',
    'Mittwoch',
    'Donnerstag',
    'Freitag',
    'Samstag',
    'Sonntag',
    'Juni',
    'Juli',
    'März',
  ];
  return [...data, ...calendar]
    .toSorted((a, b) => b.length - a.length)
    .reduce((rest, one) => rest.replaceAll(one, ' '), text);
}

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

interface Look {
  readonly theme: 'light' | 'dark';
  readonly density: 'comfortable' | 'compact';
  readonly language: 'en' | 'de';
}
const LONG = process.env.RIPECELL_LONG === '1';
const LOOKS = (['light', 'dark'] as const).flatMap((theme) =>
  (['comfortable', 'compact'] as const).flatMap((density) =>
    (['en', 'de'] as const).map((language): Look => ({ theme, density, language })),
  ),
);

const SHORT: readonly Look[] = [{ theme: 'dark', density: 'compact', language: 'de' }];

test.each(LONG ? LOOKS : SHORT)(
  'pages are free of axe violations and scroll nowhere sideways: $language, $theme, $density',
  async (look) => {
    const { page } = house;
    await choose(page, look);
    const found: string[] = [];
    for (const [title, address] of LONG ? pages : pages.filter(([name]) => SAMPLE.includes(name))) {
      await show(page, address);
      found.push(...(await axeTroubles(page, `${title} ${address}`)));
      if ((await sideways(page)) > 0) found.push(`${title} ${address}: scrolls sideways`);
    }
    expect(found).toEqual([]);
    expect(house.problems).toEqual([]);
  },
  LONG ? 900_000 : 240_000,
);

test('with every sentence bracketed and 40 % longer nothing is cut and nothing bypasses the catalogue', async () => {
  const { page } = house;
  await choose(page, { theme: 'light', density: 'comfortable', language: 'de' });
  await page.route(/\/assets\/german(-first)?-[^/]*\.js$/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: pseudoScript(await response.text()) });
  });
  const data = new Set<string>();
  page.on('response', (response) => {
    if (response.url().endsWith('/call'))
      void response.json().then(
        (answer) => collectTexts(answer, data),
        () => {},
      );
  });
  await page.reload();
  await page.waitForFunction(() => document.body.innerText.includes('⟦'));
  const found: string[] = [];
  for (const [, view] of pages) {
    await show(page, view);
    if ((await sideways(page)) > 0) found.push(`${view}: scrolls sideways`);
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll('main button, main a, nav a')]
        .filter(
          (one) =>
            one.scrollWidth > one.clientWidth + 1 &&
            one.clientWidth > 0 &&
            getComputedStyle(one).overflowX === 'hidden',
        )
        .map((one) => one.textContent ?? ''),
    );
    found.push(...cut.map((text) => `${view}: cut: ${text}`));
    const shown = await page.evaluate(() =>
      [...document.querySelectorAll('h1, h2, h3, th, label, button, nav a, legend, summary, option')].map(
        (one) => one.textContent ?? '',
      ),
    );
    const plain = shown.filter((text) => !text.includes('⟦') && /\p{L}{4}/u.test(withoutData(text, data)));
    found.push(...plain.map((text) => `${view}: not from the catalogue: ${text}`));
  }
  expect(found).toEqual([]);
}, 240_000);
