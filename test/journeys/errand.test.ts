// Someone else looks: boxes go out as a small file, come back with looks, and only those come in. In the browser shell.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { reckonHere } from '../../main/engine/yield/reckon.ts';
import { recordLook } from '../../main/operations/boxes/record-look.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { dayOfIso } from '../../shared/kernel/day.ts';
import { countedIds, MIGRATIONS_FOLDER, mustOk } from '../builders/desk.ts';
import { DEMO_DAY, openDemo, prepareDoors, setDay } from './doors.ts';

const { open } = prepareDoors();
const folder = mkdtempSync(join(tmpdir(), 'ripecell-errand-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
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
  setDay(DEMO_DAY);
  const house = await open();
  const { page } = house;
  await openDemo(house);
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
}, 120_000);
