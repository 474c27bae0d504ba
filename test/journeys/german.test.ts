// Every view in German: no accessibility violation with lang="de" (axe-core, WCAG 2.2 A and AA rules, 3.1.1 language of
// the page), nothing that scrolls sideways; and in a pseudo-locale, whose sentences are bracketed and 40 % longer (usual
// allowance for translation; W3C, Text size in translation): no view grows sideways, no button is cut, and every visible
// word comes from the catalogue.
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { doors, launchBrowser, type OpenDoor, setDay } from './doors.ts';
import { pseudoScript } from './pseudo-locale.ts';

const VIEWS = [
  '/today',
  '/batches',
  '/batches/new',
  '/today/steps',
  '/hives',
  '/hives/stock',
  '/hives/looks',
  '/boxes',
  '/boxes/looks',
  '/notes?text=the',
  '/queens',
  '/season',
  '/season?tab=queens',
  '/season?tab=plan',
  '/season?tab=report',
  '/season?tab=weather',
  '/print',
  '/files',
  '/class',
  '/history',
  '/settings',
  '/help',
] as const;

let browser: Browser;
let house: OpenDoor;

beforeAll(async () => {
  setDay('2026-06-01');
  browser = await launchBrowser();
  const loopback = doors(() => browser)[0];
  if (!loopback) throw new Error('no loopback door');
  house = await loopback.open();
  await house.page.getByRole('button', { name: 'Look at the demo' }).click();
  await house.page.getByRole('heading', { name: 'Today' }).waitFor({ timeout: 30_000 });
  await speakGerman(house.page);
}, 600_000);

afterAll(async () => {
  await house?.close();
  await browser?.close();
  vi.useRealTimers();
});

/** By the page itself, as a person does it. */
async function speakGerman(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.location.hash = '/settings';
  });
  await page.getByLabel('Language', { exact: true }).selectOption('de');
  await page.waitForFunction(() => document.documentElement.lang === 'de');
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

test('every view in German is free of axe violations and scrolls nowhere sideways', async () => {
  const found: string[] = [];
  for (const view of VIEWS) {
    await show(house.page, view);
    const { violations } = await new AxeBuilder({ page: house.page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    for (const { id, nodes } of violations) found.push(`${view}: ${id}: ${nodes[0]?.html.slice(0, 160)}`);
    if ((await sideways(house.page)) > 0) found.push(`${view}: scrolls sideways`);
  }
  expect(found).toEqual([]);
  expect(house.problems).toEqual([]);
}, 240_000);

test('with every sentence bracketed and 40 % longer nothing is cut and nothing bypasses the catalogue', async () => {
  const { page } = house;
  await page.route(/\/assets\/german-[^/]*\.js$/, async (route) => {
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
  for (const view of VIEWS) {
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
