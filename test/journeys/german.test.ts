import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { choose, pagesOf, type Shown, show, sideways } from './pages.ts';
import { pseudoScript } from './pseudo-locale.ts';

let pages: readonly Shown[];
const house = prepareHouse(DEMO_DAY, async (opened) => {
  await openDemo(opened);
  pages = await pagesOf(opened.page);
});

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

test('with every sentence bracketed and 40 % longer nothing is cut and nothing bypasses the catalogue', async () => {
  const { page } = house();
  await choose(page, { theme: 'light', density: 'comfortable', language: 'de' });
  await page.route(/\/assets\/german(-first)?-[^/]*\.js$/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: pseudoScript(await response.text()) });
  });
  const data = new Set<string>();
  const reading: Promise<void>[] = [];
  page.on('response', (response) => {
    if (!response.url().endsWith('/call')) return;
    reading.push(
      response.json().then(
        (answer) => collectTexts(answer, data),
        () => {},
      ),
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
    // An answer may be drawn before the test has read it too.
    await Promise.all(reading);
    const plain = shown.filter((text) => !text.includes('⟦') && /\p{L}{4}/u.test(withoutData(text, data)));
    found.push(...plain.map((text) => `${view}: not from the catalogue: ${text}`));
  }
  expect(found).toEqual([]);
}, 240_000);
