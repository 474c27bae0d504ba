// Every page of the program as the demo fills it, and what axe finds on one.
import { AxeBuilder } from '@axe-core/playwright';
import type { Page, Request } from 'playwright';

/** A page by its English title and its address. */
export type Shown = readonly [title: string, address: string];

async function asked(page: Page, path: string): Promise<unknown> {
  const reply = await page.evaluate(async (wanted) => {
    const headers = { 'content-type': 'application/json' };
    const body = JSON.stringify({ kind: 'query', path: wanted });
    return (await fetch('/call', { method: 'POST', headers, body })).json();
  }, path);
  return (reply as { data: unknown }).data;
}

/** All pages, those of single batches, hives, boxes and queens included; the demo must be open. */
export async function pagesOf(page: Page): Promise<readonly Shown[]> {
  type Coded = readonly { readonly id: string; readonly code: string }[];
  const batches = (await asked(page, 'batches.listBatches')) as Coded;
  const { hives } = (await asked(page, 'hives.listHives')) as { hives: Coded };
  const boxes = (await asked(page, 'boxes.listBoxes')) as Coded;
  const queens = (await asked(page, 'queens.listQueens')) as { queen: { id: string; number: string } }[];
  const queen = (number: string) => queens.find((one) => one.queen.number === number)?.queen.id;
  const id = (list: Coded, code: string) => list.find((one) => one.code === code)?.id;
  return [
    ['Today', '/today'],
    ['Batches', '/batches'],
    ['26-01', `/batches/${id(batches, '26-01')}`],
    ['25-06', `/batches/${id(batches, '25-06')}`],
    ['Start a batch', '/batches/new'],
    ['Type what was done', '/today/steps'],
    ['Hives', '/hives'],
    ['Choose a breeder', '/hives/stock'],
    ['Type looks at hives', '/hives/looks'],
    ['Type feeding', '/hives/feeding'],
    ['H04', `/hives/${id(hives, 'H04')}`],
    ['Mating boxes', '/boxes'],
    ['Mating boxes', `/boxes?box=${id(boxes, 'K03')}`],
    ['Type looks', `/boxes/looks?batch=${id(batches, '26-01')}&step=first-look`],
    ['Type feeding', '/boxes/feeding'],
    ['Search the notes', '/notes?text=the'],
    ['Queens', '/queens'],
    ['Queen 25-008', `/queens/${queen('25-008')}`],
    ['Season', '/season'],
    ['Season', '/season?tab=queens'],
    ['Season', '/season?tab=plan'],
    ['Season', '/season?tab=report'],
    ['Season', '/season?tab=weather'],
    ['Print', `/print?batch=${id(batches, '26-01')}`],
    ['Files', '/files'],
    ['Class', '/class'],
    ['History', '/history'],
    ['Settings', '/settings'],
    ['Help and glossary', '/help'],
  ];
}

const PAGE_OF_KEY = {
  1: 'Today',
  2: 'Batches',
  3: 'Hives',
  4: 'Mating boxes',
  5: 'Queens',
  6: 'Season',
  n: 'Start a batch',
} as const;

/** Turns to a page by its key and waits until it is there: the page before may have fields of the same name. */
export async function turnTo(page: Page, key: keyof typeof PAGE_OF_KEY): Promise<void> {
  await page.keyboard.press(`Control+${key}`);
  await page.getByRole('heading', { level: 1, name: PAGE_OF_KEY[key], exact: true }).waitFor();
}

/** Looks in a row at which nothing is on its way, a moment apart, after which a page is taken to stand. */
const QUIET_LOOKS = 4;
const MOMENT = 50;

/** Goes to a page and waits until it stands: neither script nor answer is on its way any more. */
export async function show(page: Page, address: string): Promise<void> {
  const onWay = new Set<Request>();
  const begin = (request: Request) => onWay.add(request);
  const end = (request: Request) => onWay.delete(request);
  page.on('request', begin).on('requestfinished', end).on('requestfailed', end);
  await page.evaluate((hash) => {
    window.scrollTo(0, 0);
    window.location.hash = hash;
    return new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  }, address);
  for (let quiet = 0; quiet < QUIET_LOOKS; ) {
    await page.waitForTimeout(MOMENT);
    // On a busy machine a page may still be drawing what came, and ask for more after that.
    await page.evaluate(() => new Promise((idle) => requestIdleCallback(idle, { timeout: 500 })));
    quiet = onWay.size === 0 ? quiet + 1 : 0;
  }
  page.off('request', begin).off('requestfinished', end).off('requestfailed', end);
  await page.locator('main h1').waitFor();
  await page.evaluate(() => document.fonts.ready);
}

export interface Look {
  readonly theme: 'light' | 'dark';
  readonly density: 'comfortable' | 'compact';
  readonly language: 'en' | 'de';
}
export const PLAIN: Look = { theme: 'light', density: 'comfortable', language: 'en' };
export const LOOKS = (['light', 'dark'] as const).flatMap((theme) =>
  (['comfortable', 'compact'] as const).flatMap((density) =>
    (['en', 'de'] as const).map((language): Look => ({ theme, density, language })),
  ),
);

/** By the page itself, as a person does it. */
export async function choose(page: Page, { theme, density, language }: Look): Promise<void> {
  await page.emulateMedia({ colorScheme: theme, media: 'screen', reducedMotion: 'reduce' });
  await show(page, '/settings');
  const [, , densities, languages] = await page.locator('main select').all();
  await densities?.selectOption(density);
  await page.waitForFunction((chosen) => document.documentElement.dataset.density === chosen, density);
  await languages?.selectOption(language);
  await page.waitForFunction((chosen) => document.documentElement.lang === chosen, language);
}

/** By how many points the page scrolls sideways. */
export const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

const AXE_TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Violations on the page as it is shown now, each with the first place it was found in. */
export async function axeTroubles(page: Page, name: string): Promise<readonly string[]> {
  // There are no frames, so a second page to gather what each of them says is not needed.
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).withTags(AXE_TAGS).analyze();
  return violations.map(
    ({ id, nodes }) =>
      `${name}: ${id}: ${nodes[0]?.html.slice(0, 160)} ${nodes[0]?.failureSummary?.slice(0, 160) ?? ''}`,
  );
}
