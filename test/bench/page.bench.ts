// The first page: what it weighs, and how soon something is seen, against a blank page in the same browser and run.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type Browser, chromium } from 'playwright';
import { startLoopback } from '../../app/loopback/loopback.ts';
import { CHROMIUM_ARGS, findChromium } from '../browser.mjs';
import type { Goal } from './goal.ts';

const OUT = join(import.meta.dirname, '../../out');
const ASSETS = join(OUT, 'renderer/assets');
const ROUNDS = 9;

export async function goals(): Promise<readonly Goal[]> {
  if (!existsSync(join(OUT, 'renderer/index.html'))) throw new Error('Not built: run "npm run build" first.');
  const kilobytes = firstPageBytes() / 1000;
  const paint = await paintRatio();
  return [
    {
      id: 'page-weight',
      what: 'script of the first page, gzip, kB',
      value: round(kilobytes),
      goal: '<= 175',
      ok: kilobytes <= 175,
    },
    {
      id: 'first-paint',
      what: 'first contentful paint of the first start against a blank page, warm, median ratio',
      value: round(paint),
      goal: '<= 3',
      ok: paint <= 3,
    },
  ];
}

const round = (value: number) => Math.round(value * 100) / 100;

/** All scripts the first page needs before it runs: the entry and what it imports, not what it fetches later. */
function firstPageBytes(): number {
  const html = readFileSync(join(OUT, 'renderer/index.html'), 'utf8');
  const waiting = [...html.matchAll(/src="\.\/assets\/([^"]+\.js)"/g)].map((match) => match[1] ?? '');
  const seen = new Set<string>();
  while (waiting.length > 0) {
    const file = waiting.pop();
    if (!file || seen.has(file)) continue;
    seen.add(file);
    const text = readFileSync(join(ASSETS, file), 'utf8');
    for (const [, imported] of text.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g))
      waiting.push(basename(imported ?? ''));
  }
  return [...seen].reduce((sum, file) => sum + gzipSync(readFileSync(join(ASSETS, file))).length, 0);
}

async function paintRatio(): Promise<number> {
  const data = mkdtempSync(join(tmpdir(), 'ripecell-bench-'));
  const shell = await startLoopback({ out: OUT, data });
  const blank = await serveBlank();
  const browser = await chromium.launch({ executablePath: findChromium(), args: [...CHROMIUM_ARGS] });
  try {
    const page = await browser.newPage();
    await page.goto(shell.url);
    const ratios: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const floor = await firstPaint(page, blank.url);
      ratios.push((await firstPaint(page, `${shell.origin}/`)) / floor);
    }
    return ratios.toSorted((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? Number.NaN;
  } finally {
    await browser.close();
    await shell.close();
    blank.server.close();
    rmSync(data, { recursive: true, force: true });
  }
}

async function firstPaint(page: Awaited<ReturnType<Browser['newPage']>>, url: string): Promise<number> {
  await page.goto(url, { waitUntil: 'load' });
  await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0);
  return page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN);
}

async function serveBlank(): Promise<{ readonly server: Server; readonly url: string }> {
  const server = createServer((_request, response) => {
    response.setHeader('content-type', 'text/html');
    response.end('<!doctype html><title>blank</title><p>blank</p>');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { server, url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/` };
}
