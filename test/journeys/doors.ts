// The two ways into the program, so that the same journey can walk through both: the real loopback server in a browser,
// and the real main entry with the real preload through a double of Electron.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright';
import { vi } from 'vitest';
import { CHROMIUM_ARGS, findChromium } from '../browser.mjs';
import { app, log } from '../double/electron.ts';
import { openWindowPage } from '../double/page.ts';

export const OUT = join(import.meta.dirname, '../../out');

export interface OpenDoor {
  readonly page: Page;
  /** Console errors and page errors met so far. */
  readonly problems: readonly string[];
  /** What the save button wrote, by either way a file leaves the page. */
  saveFile(press: () => Promise<void>): Promise<Buffer>;
  close(): Promise<void>;
}

export interface Door {
  readonly name: string;
  open(options?: BrowserContextOptions): Promise<OpenDoor>;
}

export const launchBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: findChromium(), args: [...CHROMIUM_ARGS] });

/** Both cores run in the test's own process, so its clock can be set; everything else stays real. */
export function setDay(iso: string): void {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date(`${iso}T18:30:00`) });
}

export function doors(browser: () => Browser): readonly Door[] {
  return [
    { name: 'loopback shell', open: (options) => openLoopback(browser(), options) },
    { name: 'Electron window (double)', open: (options) => openElectron(browser(), options) },
  ];
}

const PAGE_OPTIONS: BrowserContextOptions = {
  viewport: { width: 1366, height: 768 },
  reducedMotion: 'reduce',
  locale: 'en-GB',
};

async function openPage(browser: Browser, options: BrowserContextOptions = {}) {
  const context = await browser.newContext({ ...PAGE_OPTIONS, ...options });
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
