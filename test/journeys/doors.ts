// The two ways into the program, so that the same journey can walk through both: the real loopback server in a browser,
// and the real main entry with the real preload through a double of Electron.
import { cpSync, existsSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright';
import { afterAll, beforeAll, onTestFinished, vi } from 'vitest';
import { CHROMIUM_ARGS, findChromium } from '../browser.mjs';
import { app, log } from '../double/electron.ts';
import { openWindowPage } from '../double/page.ts';

export const OUT = join(import.meta.dirname, '../../out');

export interface OpenDoor {
  readonly page: Page;
  /** Console errors and page errors met so far. */
  readonly problems: readonly string[];
  /** The program's own folder: memory, safety copies, demo. */
  readonly programData: string;
  /** What the save button wrote, by either way a file leaves the page. */
  saveFile(press: () => Promise<void>): Promise<Buffer>;
  close(): Promise<void>;
}

export interface Door {
  readonly name: string;
  open(options?: BrowserContextOptions): Promise<OpenDoor>;
}

/** Both cores run in the test's own process, so its clock can be set; everything else stays real. */
export function setDay(iso: string): void {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date(`${iso}T18:30:00`) });
}

/** A browser for all tests of the file, on the given day; the clock runs again after the last. */
function prepareBrowser(day?: string): () => Browser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    if (day !== undefined) setDay(day);
    browser = await chromium.launch({ executablePath: findChromium(), args: [...CHROMIUM_ARGS] });
  }, 600_000);
  afterAll(async () => {
    await browser?.close();
    vi.useRealTimers();
  });
  return () => {
    if (!browser) throw new Error('no browser yet');
    return browser;
  };
}

interface Doors {
  /** Both, for what is walked twice. */
  readonly doors: readonly Door[];
  readonly browser: () => Browser;
  /** The browser shell, for what does not hang on the shell. */
  open(options?: BrowserContextOptions): Promise<OpenDoor>;
}

/** Ways in for the tests of a file; what a test opens is closed when it ends. */
export function prepareDoors(day?: string): Doors {
  const browser = prepareBrowser(day);
  const closing = async (opened: Promise<OpenDoor>) => {
    const house = await opened;
    onTestFinished(() => house.close());
    return house;
  };
  const open = (options?: BrowserContextOptions) => closing(openLoopback(browser(), options));
  return {
    doors: [
      { name: 'loopback shell', open },
      { name: 'Electron window (double)', open: (options) => closing(openElectron(browser(), options)) },
    ],
    browser,
    open,
  };
}

/** One house for all tests of a file, through the browser shell; `begin` makes it ready. */
export function prepareHouse(
  day: string,
  begin: (house: OpenDoor) => Promise<void>,
  options?: BrowserContextOptions,
): () => OpenDoor {
  const browser = prepareBrowser(day);
  let house: OpenDoor | undefined;
  beforeAll(async () => {
    house = await openLoopback(browser(), options);
    await begin(house);
  }, 600_000);
  afterAll(() => house?.close());
  return () => {
    if (!house) throw new Error('no house yet');
    return house;
  };
}

/** The day the demo is held at. */
export const DEMO_DAY = '2026-06-01';

export async function openDemo({ page, programData }: OpenDoor): Promise<void> {
  cpSync(await keptDemo(), join(programData, 'demo'), { recursive: true });
  await page.getByRole('button', { name: 'Look at the demo' }).click();
  await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor({ timeout: 60_000 });
}

/** The demo as it was built once for this build of the program: building it anew would take seconds in each journey. */
async function keptDemo(): Promise<string> {
  const kept = join(OUT, 'kept-demo');
  if (existsSync(kept)) return kept;
  const data = mkdtempSync(join(tmpdir(), 'ripecell-demo-'));
  const { startLoopback } = await import(pathToFileURL(join(OUT, 'main/loopback.js')).href);
  const shell = await startLoopback({ out: OUT, data, language: 'en' });
  await shell.core.call({ kind: 'mutation', path: 'workbook.openDemo' });
  await shell.close();
  const aside = `${kept}-${process.pid}`;
  cpSync(join(data, 'program/demo'), aside, { recursive: true });
  rmSync(data, { recursive: true, force: true });
  // Another test may have been faster.
  if (existsSync(kept)) rmSync(aside, { recursive: true, force: true });
  else renameSync(aside, kept);
  return kept;
}

const PAGE_OPTIONS: BrowserContextOptions = {
  viewport: { width: 1366, height: 768 },
  reducedMotion: 'reduce',
  locale: 'en-GB',
};

/** Set to milliseconds, it makes every file and answer late, as on a loaded machine: what a journey does not wait for shows. */
const LATE = Number(process.env.RIPECELL_LATE ?? 0);

async function openPage(browser: Browser, options: BrowserContextOptions = {}) {
  const context = await browser.newContext({ ...PAGE_OPTIONS, ...options });
  if (LATE > 0)
    await context.route('**/*', async (route) => {
      await setTimeout(LATE);
      await route.fallback();
    });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  const problems: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) problems.push(message.text());
  });
  page.on('pageerror', (error) => problems.push(String(error)));
  return { context, page, problems };
}

async function openLoopback(browser: Browser, options?: BrowserContextOptions): Promise<OpenDoor> {
  const data = mkdtempSync(join(tmpdir(), 'ripecell-journey-'));
  const { startLoopback } = await import(pathToFileURL(join(OUT, 'main/loopback.js')).href);
  const shell = await startLoopback({ out: OUT, data, language: 'en' });
  const { context, page, problems } = await openPage(browser, options);
  await page.goto(shell.url);
  return {
    page,
    problems,
    programData: join(data, 'program'),
    async saveFile(press) {
      const [download] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), press()]);
      return readFileSync(await download.path());
    },
    async close() {
      await context.close();
      await shell.close();
      rmSync(data, { recursive: true, force: true });
    },
  };
}

/** A loaded machine takes its time to open the workbook. */
const WINDOW_TIME = { timeout: 30_000 };

async function openElectron(browser: Browser, options?: BrowserContextOptions): Promise<OpenDoor> {
  log.folder = mkdtempSync(join(tmpdir(), 'ripecell-journey-'));
  await import(pathToFileURL(join(OUT, 'main/electron.js')).href);
  await vi.waitFor(() => {
    if (log.errors.length > 0) throw new Error(log.errors.join());
    if (log.windows.length === 0) throw new Error('no window yet');
  }, WINDOW_TIME);
  const { context, page, problems } = await openPage(browser, options);
  await openWindowPage(page, join(OUT, 'preload/preload.cjs'), log.windows[0]?.url ?? '');
  return {
    page,
    problems,
    programData: join(log.folder, 'userData'),
    async saveFile(press) {
      log.answers.save = join(log.folder, 'saved.pdf');
      await press();
      return vi.waitFor(() => readFileSync(log.answers.save), { timeout: 30_000 });
    },
    async close() {
      await context.close();
      app.quit();
      rmSync(log.folder, { recursive: true, force: true });
    },
  };
}
