// Twenty seasons of sixty batches are compared and drawn while someone types. A key waits for as long as the page is busy
// with one thing, so the longest single task of its main thread is what counts, in CPU time, as the browser's own trace has it.
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright';
import { startLoopback } from '../../app/loopback/loopback.ts';
import { CHROMIUM_ARGS, findChromium } from '../browser.mjs';
import { mustOk } from './counted-workbook.ts';
import type { Goal } from './goal.ts';
import { aLargeWorkbook } from './large-workbook.ts';

const OUT = join(import.meta.dirname, '../../out');
const ROUNDS = 5;
/** A key whose letter is seen later than this is felt as late: web.dev, Interaction to Next Paint (2023), "good". */
const GOOD = 200;

export async function goals(): Promise<readonly Goal[]> {
  if (!existsSync(join(OUT, 'renderer/index.html'))) throw new Error('Not built: run "npm run build" first.');
  const data = mkdtempSync(join(tmpdir(), 'ripecell-bench-'));
  const shell = await startLoopback({ out: OUT, data, language: 'en' });
  const browser = await chromium.launch({ executablePath: findChromium(), args: [...CHROMIUM_ARGS] });
  try {
    mustOk(await shell.core.openFile(aLargeWorkbook(data)));
    const page = await browser.newPage({ viewport: { width: 1366, height: 768 }, reducedMotion: 'reduce' });
    await page.goto(shell.url);
    const rounds: Round[] = [];
    for (let round = 0; round <= ROUNDS; round += 1) rounds.push(await typeWhileDrawing(browser, page));
    const [first, ...warm] = rounds;
    const longest = median(warm.map(({ task }) => task));
    const marks = warm[0]?.marks ?? 0;
    return [
      {
        id: 'chart-typing',
        what: `longest task of the page while ${LETTERS.length} keys are typed and 20 seasons with ${marks} batches are drawn, in CPU milliseconds (the first time, with the chart being fetched, ${first?.task})`,
        value: longest,
        goal: `at most ${GOOD}`,
        ok: longest <= GOOD && marks > 1000,
      },
    ];
  } finally {
    await browser.close();
    await shell.close();
    rmSync(data, { recursive: true, force: true });
  }
}

interface Round {
  readonly task: number;
  readonly marks: number;
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

async function typeWhileDrawing(browser: Browser, page: Page): Promise<Round> {
  await page.goto(`${page.url().split('#')[0]}#/`);
  await page.reload();
  await page.getByRole('link', { name: 'Season', exact: true }).click();
  const by = page.getByLabel('Compare by', { exact: true });
  await by.waitFor();
  await browser.startTracing(page, { categories: ['toplevel', 'disabled-by-default-devtools.timeline'] });
  await by.selectOption('season');
  await page.keyboard.press('Control+k');
  for (const letter of LETTERS) {
    await page.keyboard.press(letter);
    await page.waitForTimeout(60);
  }
  await page.keyboard.press('Escape');
  await page.locator('figure svg').first().waitFor();
  const marks = await settledMarks(page);
  return { task: longestTask(await browser.stopTracing()), marks };
}

/** Until the chart has all its ticks: one a batch, drawn as moves of a path; the same number twice. */
async function settledMarks(page: Page): Promise<number> {
  let before = -1;
  for (;;) {
    const now = await page.evaluate(() =>
      [...document.querySelectorAll('figure svg path')]
        .map((path) => path.getAttribute('d')?.match(/M/g)?.length ?? 0)
        .reduce((sum, marks) => sum + marks, 0),
    );
    if (now === before) return now;
    before = now;
    await page.waitForTimeout(300);
  }
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** CPU time in microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Of the page's main thread, in milliseconds. */
function longestTask(trace: Buffer): number {
  const { traceEvents } = JSON.parse(trace.toString('utf8')) as { readonly traceEvents: readonly TraceEvent[] };
  const mains = traceEvents
    .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
    .map(({ pid, tid }) => `${pid} ${tid}`);
  const tasks = traceEvents.filter(({ name, pid, tid }) => /RunTask$/.test(name) && mains.includes(`${pid} ${tid}`));
  if (tasks.length < 100) throw new Error(`The trace has ${tasks.length} tasks of the page.`);
  return Math.round(Math.max(...tasks.map(({ tdur }) => tdur ?? 0)) / 100) / 10;
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.POSITIVE_INFINITY;
