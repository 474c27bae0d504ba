// Half-typed rows, notes and forms are there again after the page was left, and after it was loaded anew as after a crash.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { aStart } from '../builders/running-batch.ts';
import { OUT, prepareDoors, setDay } from './doors.ts';
import { ask, beginBatch, beginWorkbook, beginYard, placeCells } from './own-yard.ts';
import { turnTo } from './pages.ts';

const { browser, open } = prepareDoors();

test('what was typed and not saved is found again, and is gone once it is saved', async () => {
  setDay('2026-05-04');
  const house = await open();
  const { page } = house;
  await beginWorkbook(page);
  await turnTo(page, 'n');
  const cells = page.getByLabel('Cells', { exact: true });
  await cells.fill('24');
  await page.getByRole('link', { name: 'Today' }).click();
  await page.getByRole('heading', { name: 'Today' }).waitFor();
  await turnTo(page, 'n');
  await page.getByText('Typed before and not saved yet.').waitFor();
  await expect.poll(() => cells.inputValue()).toBe('24');
  await page.getByRole('button', { name: 'Start the batch' }).click();
  await page.getByRole('heading', { name: /^26-01/ }).waitFor();

  await page.getByLabel('Note', { exact: true }).fill('windy, all in th');
  await expect.poll(async () => (await draftKeys(page)).join()).toMatch(/^batch-note:/);
  await page.reload();
  await page.getByText('Typed before and not saved yet.').waitFor();
  await expect.poll(() => page.getByLabel('Note', { exact: true }).inputValue()).toBe('windy, all in th');
  await page.getByRole('button', { name: 'Save notes' }).click();
  await page.getByText('Typed before and not saved yet.').waitFor({ state: 'detached' });
  await page.reload();
  await page.getByLabel('Note', { exact: true }).waitFor();
  await expect.poll(() => page.getByText('Typed before and not saved yet.').count()).toBe(0);
  expect(house.problems).toEqual([]);
}, 60_000);

test('a part that cannot be loaded is said in a sentence; what was typed stays, and the next try brings it', async () => {
  setDay('2026-05-04');
  const house = await open();
  const { page } = house;
  await beginWorkbook(page);
  await turnTo(page, 'n');
  await page.getByLabel('Cells', { exact: true }).fill('24');
  await page.getByRole('link', { name: 'Today' }).click();
  await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
  const script = /assets\/PrintChoice-/;
  await page.route(script, (route) => route.abort());
  await page.keyboard.press('Control+p');
  const said = page.getByRole('alert').filter({ hasText: 'could not be loaded' });
  await said.waitFor();
  await said.getByRole('button', { name: 'Leave as it was' }).click();
  await said.waitFor({ state: 'detached' });
  await page.keyboard.press('Control+p');
  await page.unroute(script);
  await said.getByRole('button', { name: 'Try once more' }).click();
  await page.getByRole('dialog').getByText('Yard sheet for tomorrow').waitFor();
  await page.keyboard.press('Escape');
  await turnTo(page, 'n');
  await expect.poll(() => page.getByLabel('Cells', { exact: true }).inputValue()).toBe('24');
  expect(house.problems.filter((problem) => !problem.includes('Failed to load resource'))).toEqual([]);
}, 90_000);

/** Every sheet of the evening, with a field in which nothing is saved before it is left. */
const SHEETS = [
  {
    address: '/boxes/looks',
    field: 'K02, Note',
    text: 'bees in front of the entr',
    kept: 'box-look:2026-05-28:box-2.note',
  },
  { address: '/hives/looks', field: 'H12, What I saw', text: 'drone brood on th', kept: 'hive-look:2026-05-28:h12' },
  { address: '/hives/feeding', field: 'H03, How much', text: '07,5', kept: 'feeding:2026-05-28:hives:syrup-1-1::h03' },
  { address: '/today/steps', field: /, 26-02, Note$/, text: 'two frames fr', kept: /^step-note:batch-2 / },
  { address: '/batches/batch-1', field: 'Bar 2, Taken', text: '07', kept: /^bar-counts:/ },
] as const;

test('a row left half typed when the page is killed, or the program, is there again; saved, it cannot come back', async () => {
  const data = mkdtempSync(join(tmpdir(), 'ripecell-drafts-'));
  let shell = await aShell(data);
  try {
    await beginYard(shell.page, '2026-05-04');
    await beginBatch(shell.page);
    await placeCells(shell.page, 'K01-K05', 5);
    const hives = { breederId: 'h03', builderId: 'h12', newBreeder: null, newBuilder: null };
    const second = { id: 'batch-2', method: 'larva-grafting', comb: null, anchorOn: '2026-05-29', ...hives } as const;
    await ask(shell.page, 'mutation', 'batches.startBatch', aStart(second));
    setDay('2026-05-28');
    shell = await shell.killPage();
    for (const { address, field, text, kept } of SHEETS) {
      await openAt(shell.page, address, field);
      await shell.page.getByLabel(field).first().fill(text);
      await expect.poll(() => draftKeys(shell.page)).toContainEqual(expect.stringMatching(kept));
      shell = await shell.killPage();
    }
    shell = await shell.killProgram();
    for (const { address, field, text, kept } of SHEETS) {
      await openAt(shell.page, address, field);
      const typed = shell.page.getByLabel(field).first();
      await expect.poll(() => typed.inputValue(), { message: address }).toBe(text);
      await shell.page.getByText('Typed before and not saved yet. Enter saves it.').first().waitFor();
      await typed.focus();
      await shell.page.keyboard.press('Enter');
      await expect.poll(() => draftKeys(shell.page)).not.toContainEqual(expect.stringMatching(kept));
      shell = await shell.killPage();
      await openAt(shell.page, address, field);
      await expect
        .poll(() => shell.page.getByText('Typed before and not saved yet.').count(), { message: address })
        .toBe(0);
    }
    expect(await draftKeys(shell.page)).toEqual([]);
    expect(shell.problems).toEqual([]);
  } finally {
    await shell.end();
    rmSync(data, { recursive: true, force: true });
  }
}, 240_000);

test('a queen being numbered, and a row of yesterday, are found where they were left', async () => {
  const data = mkdtempSync(join(tmpdir(), 'ripecell-drafts-'));
  let shell = await aShell(data);
  try {
    await beginYard(shell.page, '2026-05-04');
    await beginBatch(shell.page);
    await placeCells(shell.page, 'K01-K05', 5);
    setDay('2026-05-28');
    shell = await shell.killPage();
    await openAt(shell.page, '/boxes/looks', 'K01, Note');
    await shell.page.keyboard.press('Shift+L');
    await shell.page.locator('input[data-number]').fill('26-7');
    await expect.poll(() => draftKeys(shell.page)).toEqual(['box-look:2026-05-28:box-1.number']);
    // The next evening begins before the page is opened: it asks for the day as it opens.
    setDay('2026-05-29');
    shell = await shell.killPage();
    await openAt(shell.page, '/boxes/looks', 'K01, Note');
    await shell.page.getByText('Half typed and not saved: Thu 28 May').waitFor();
    await expect.poll(() => shell.page.locator('input[data-number]').count()).toBe(0);
    await shell.page.getByRole('button', { name: 'Show it' }).click();
    const number = shell.page.locator('input[data-number]');
    await number.and(shell.page.locator(':focus')).waitFor();
    await expect.poll(() => number.inputValue()).toBe('26-7');
    await shell.page.keyboard.press('Enter');
    await shell.page.getByRole('row', { name: /^K01 / }).getByText('26-7').waitFor();
    await expect.poll(() => draftKeys(shell.page)).toEqual([]);
  } finally {
    await shell.end();
    rmSync(data, { recursive: true, force: true });
  }
}, 120_000);

interface Shell {
  readonly page: Page;
  readonly problems: readonly string[];
  /** The page goes without a word, another opens. */
  killPage(): Promise<Shell>;
  /** So does the program, which is started anew. */
  killProgram(): Promise<Shell>;
  end(): Promise<void>;
}

async function aShell(data: string, problems: string[] = []): Promise<Shell> {
  const { startLoopback } = await import(pathToFileURL(join(OUT, 'main/loopback.js')).href);
  const loopback = await startLoopback({ out: OUT, data, language: 'en' });
  const context = await browser().newContext({ locale: 'en-GB', reducedMotion: 'reduce' });
  const open = async (url: string): Promise<Shell> => {
    const page = await context.newPage();
    page.setDefaultTimeout(30_000);
    page.on('pageerror', (error) => problems.push(String(error)));
    await page.goto(url);
    return {
      page,
      problems,
      async killPage() {
        await page.close();
        return open(loopback.origin);
      },
      async killProgram() {
        await context.close();
        await loopback.close();
        return aShell(data, problems);
      },
      async end() {
        await context.close();
        await loopback.close();
      },
    };
  };
  return open(loopback.url);
}

async function openAt(page: Page, address: string, field: string | RegExp): Promise<void> {
  await page.locator('main h1').waitFor();
  await page.evaluate((to) => {
    window.location.hash = to;
  }, address);
  await page.getByLabel(field).first().waitFor();
}

/** As the core has them. */
function draftKeys(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const headers = { 'content-type': 'application/json' };
    const body = JSON.stringify({ kind: 'query', path: 'drafts.listDrafts' });
    const reply = await (await fetch('/call', { method: 'POST', headers, body })).json();
    return Object.keys(reply.data);
  });
}
