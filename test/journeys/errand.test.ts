// Someone else looks: boxes go out as a small file, come back with looks, and only those come in. In the browser shell.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { reckonHere } from '../../main/engine/yield/reckon.ts';
import { recordLook } from '../../main/operations/boxes/record-look.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { dayOfIso } from '../../shared/kernel/day.ts';
import { countedIds, MIGRATIONS_FOLDER, mustOk } from '../builders/desk.ts';
import { doors, launchBrowser, setDay } from './doors.ts';

let browser: Browser;
const folder = mkdtempSync(join(tmpdir(), 'ripecell-errand-'));
beforeAll(async () => {
  browser = await launchBrowser();
}, 600_000);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
  vi.useRealTimers();
});

/** The other person: opens the file with the program, types one look, closes it. */
function typeThere(file: string): string {
  const migrations = readMigrations(MIGRATIONS_FOLDER);
  const now = () => '2026-05-21T18:00:00.000Z';
  const workbook = mustOk(openWorkbookFile(file, { migrations, safetyFolder: join(folder, 'safety'), now }));
  const box = workbook.tables.boxes.where({ code: 'K01' })[0];
  if (!box) throw new Error('K01 is not in the errand');
  const desk = {
    workbook,
    today: dayOfIso('2026-05-21'),
    ids: countedIds(),
    reckon: reckonHere(),
    computerLanguage: 'en' as const,
  };
  const look = {
    id: 'theirs',
    boxId: box.id,
    lookedOn: '2026-05-21',
    strength: 4,
    food: null,
    note: null,
    queen: null,
  };
  mustOk(recordLook(desk, { ...look, result: 'laying' }));
  workbook.close();
  return file;
}

test('looks typed by someone else come in once', async () => {
  setDay('2026-06-01');
  const house = await doors(() => browser)[0]?.open();
  if (!house) throw new Error('no door');
  try {
    const { page } = house;
    await page.getByRole('button', { name: 'Look at the demo' }).click();
    await page.getByRole('heading', { name: 'Today' }).waitFor({ timeout: 60_000 });
    await page.getByRole('link', { name: 'Mating boxes' }).click();
    await page.getByLabel('Which to hand out').fill('K01-K03');
    const bytes = await house.saveFile(() => page.getByRole('button', { name: 'Save the errand' }).click());
    const file = join(folder, 'errand.ripecell');
    writeFileSync(file, bytes);
    const choose = page.getByLabel('An errand that came back');
    await choose.setInputFiles(file);
    await page.getByText('Nothing new in it').waitFor();
    await choose.setInputFiles({
      name: 'errand.ripecell',
      mimeType: 'application/octet-stream',
      buffer: readFileSync(typeThere(file)),
    });
    await page.getByText('comes in', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Take 1 look in' }).click();
    await page.getByText('1 look was taken in.').waitFor();
    await choose.setInputFiles(file);
    await page.getByText('Nothing new in it').waitFor();
    expect(house.problems).toEqual([]);
  } finally {
    await house.close();
  }
}, 120_000);
