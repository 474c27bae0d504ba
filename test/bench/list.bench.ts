// Long lists: ten thousand rows in the program's own table against the community data grid with its largest page, side by
// side in one browser and run, on the time its main thread is busy; and a key in the typing grid to its saved line.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import react from '@vitejs/plugin-react';
import { type Browser, chromium, type Page } from 'playwright';
import { build } from 'vite';
import { startLoopback } from '../../app/loopback/loopback.ts';
import { CHROMIUM_ARGS, findChromium } from '../browser.mjs';
import type { Goal } from './goal.ts';

const OUT = join(import.meta.dirname, '../../out');
const ROUNDS = 7;

export async function goals(): Promise<readonly Goal[]> {
  if (!existsSync(join(OUT, 'renderer/index.html'))) throw new Error('Not built: run "npm run build" first.');
  const browser = await chromium.launch({ executablePath: findChromium(), args: [...CHROMIUM_ARGS] });
  try {
    const list = await measureLists(browser);
    const key = await measureKey(browser);
    return [
      {
        id: 'list-nodes',
        what: 'DOM nodes of a list of 10,000 rows',
        value: list.nodes,
        goal: '<= 400',
        ok: list.nodes <= 400,
      },
      {
        id: 'list-mount',
        what: 'mounting 10,000 rows against the community data grid with its largest page, median ratio of busy time',
        value: round(list.ratio),
        goal: '<= 0.5',
        ok: list.ratio <= 0.5,
      },
      {
        id: 'entry-key-saved',
        what: 'a key in the typing grid until its row says saved, median, ms',
        value: round(key),
        goal: 'printed',
        ok: Number.isFinite(key),
      },
    ];
  } finally {
    await browser.close();
  }
}

const round = (value: number) => Math.round(value * 1000) / 1000;
const median = (values: readonly number[]) =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

async function measureLists(browser: Browser): Promise<{ readonly nodes: number; readonly ratio: number }> {
  const outDir = mkdtempSync(join(tmpdir(), 'ripecell-list-'));
  const root = join(import.meta.dirname, 'list');
  await build({
    root,
    base: './',
    configFile: false,
    logLevel: 'error',
    plugins: [react()],
    build: { outDir, target: 'chrome138' },
  });
  const { server, url } = await serve(outDir);
  try {
    const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
    await page.goto(url);
    await page.waitForFunction(() => 'mount' in window);
    const busy = await busyTime(page);
    const mount = async (what: 'own' | 'grid') => {
      const before = await busy();
      const { nodes } = await page.evaluate((one) => window.mount(one), what);
      return { nodes, seconds: (await busy()) - before };
    };
    // The first of each also compiles its code.
    let { nodes } = await mount('own');
    await mount('grid');
    const ratios: number[] = [];
    for (let turn = 0; turn < ROUNDS; turn += 1) {
      const own = await mount('own');
      nodes = Math.max(nodes, own.nodes);
      ratios.push(own.seconds / (await mount('grid')).seconds);
    }
    return { nodes, ratio: median(ratios) };
  } finally {
    server.close();
    rmSync(outDir, { recursive: true, force: true });
  }
}

/** Seconds the page's main thread has been at work so far: script, style and layout, without waiting. */
async function busyTime(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
  };
}

const TYPES: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };

async function serve(folder: string): Promise<{ readonly server: Server; readonly url: string }> {
  const server = createServer((request, response) => {
    const file = join(folder, request.url === '/' ? 'index.html' : ((request.url ?? '').split('?')[0]?.slice(1) ?? ''));
    if (!existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    response.setHeader('content-type', TYPES[extname(file)] ?? 'application/octet-stream');
    response.end(readFileSync(file));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { server, url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/` };
}

/** On the demo: press a result, wait until the row carries its saved mark; the page's own clock, nine rows. */
async function measureKey(browser: Browser): Promise<number> {
  const data = mkdtempSync(join(tmpdir(), 'ripecell-bench-'));
  const shell = await startLoopback({ out: OUT, data });
  try {
    const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
    await page.goto(shell.url);
    await page.getByRole('button', { name: 'Look at the demo' }).click();
    await page.getByRole('button', { name: 'Type looks' }).first().click({ timeout: 60_000 });
    await page.locator('[data-now]').first().waitFor();
    await page.evaluate(watchKeys);
    const rows = await page.locator('tr[data-row]').count();
    for (let row = 1; row <= rows; row += 1) {
      await page.keyboard.press('l');
      await page.waitForFunction((wanted) => document.querySelectorAll('[data-saved="saved"]').length >= wanted, row);
    }
    return median(await page.evaluate(() => (window as unknown as { readonly waits: readonly number[] }).waits));
  } finally {
    await shell.close();
    rmSync(data, { recursive: true, force: true });
  }
}

/** Keeps the milliseconds from each key to the next row that is marked as saved. */
function watchKeys(): void {
  const waits: number[] = [];
  let from = 0;
  let saved = 0;
  document.addEventListener(
    'keydown',
    (event) => {
      from = event.timeStamp;
    },
    true,
  );
  new MutationObserver(() => {
    const now = document.querySelectorAll('[data-saved="saved"]').length;
    if (now > saved) waits.push(performance.now() - from);
    saved = now;
  }).observe(document.body, { subtree: true, childList: true, attributes: true });
  Object.assign(window, { waits });
}
