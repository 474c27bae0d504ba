// Files in and out through the window: hives from a table with an error in it, a spreadsheet, a calendar after a slip, and
// a package that is opened with one act.
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import type { Page } from 'playwright';
import readXlsxFile from 'read-excel-file/universal';
import { expect, test } from 'vitest';
import { prepareDoors, setDay } from './doors.ts';
import { beginWorkbook } from './own-yard.ts';
import { turnTo } from './pages.ts';

const { open } = prepareDoors();

const sectionOf = (page: Page, heading: string) =>
  page.locator('section', { has: page.getByRole('heading', { name: heading, exact: true }) });

async function downloaded(page: Page, button: string): Promise<Buffer> {
  const arrives = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  return readFileSync(await (await arrives).path());
}

async function takeInHives(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Files', exact: true }).click();
  const section = sectionOf(page, 'Take in a table');
  const text = 'Hive;Apiary;Line\nH01;Orchard;Žofie\nH02;Orchard;\nH01;Wood;\n';
  await section.locator('input[type=file]').setInputFiles({
    name: 'hives.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(text),
  });
  await section.getByText('2 of 3 rows can be taken in.').waitFor();
  await section.getByText('Code: “H01” stands in row 2 already. Keep one of the two.').waitFor();
  await expect.poll(() => section.getByRole('button', { name: 'Take in 2 rows' }).isDisabled()).toBe(true);
  await section.getByLabel('Leave out the rows with problems').check();
  await section.getByRole('button', { name: 'Take in 2 rows' }).click();
  await section.getByText('2 rows taken in, 1 left out.').waitFor();
}

async function startBatch(page: Page): Promise<void> {
  await turnTo(page, 'n');
  await page.getByRole('button', { name: 'Start the batch' }).click();
  await page.getByRole('heading', { name: /^26-01/ }).waitFor();
  await page.getByRole('link', { name: 'Files', exact: true }).click();
}

/** Sealed cells kept cool move the days that are in the phone: said on the batch page and on Today until a new file is made. */
async function moveDays(page: Page): Promise<void> {
  const stale = page.getByText(
    /^Since the calendar file of Mon 4 May \d+ events have changed; the phone does not know yet\./,
  );
  await turnTo(page, 2);
  await page
    .getByRole('link', { name: /^26-01/ })
    .first()
    .click();
  await page.getByRole('heading', { level: 1, name: /^26-01/ }).waitFor();
  await expect.poll(() => stale.count()).toBe(0);
  await page.getByLabel('Sealed cells kept at').fill('32 °C');
  await page.getByRole('button', { name: 'Save the warmth' }).click();
  await page.getByRole('button', { name: 'Save, and let the days move' }).click();
  await stale.waitFor();
  await turnTo(page, 1);
  await stale.waitFor();
  await page.getByText(/Queens emerge, 26-01: .* becomes /).waitFor();
  await page.getByRole('link', { name: 'Make a new file' }).click();
  await downloaded(page, 'Save the calendar file');
  await page.getByText('The file of Mon 4 May still holds: nothing has changed since.').waitFor();
  await turnTo(page, 1);
  await expect.poll(() => stale.count()).toBe(0);
  await page.getByRole('link', { name: 'Files', exact: true }).click();
}

test('a table comes in, tables and a calendar go out, and the package opens as the same workbook', async () => {
  setDay('2026-05-04');
  const house = await open();
  const { page } = house;
  await beginWorkbook(page);
  await takeInHives(page);
  const xlsx = await downloaded(page, 'Save the file');
  const sheets = await readXlsxFile(Uint8Array.from(xlsx).buffer);
  const hives = sheets.find(({ sheet }) => sheet === 'Hives')?.data ?? [];
  expect(hives.slice(1).map((row) => [row[1], row[3], row[5]])).toEqual([
    ['H01', 'Orchard', 'Žofie'],
    ['H02', 'Orchard', null],
  ]);
  await startBatch(page);
  const calendar = await downloaded(page, 'Save the calendar file');
  const events = new ICAL.Component(ICAL.parse(calendar.toString())).getAllSubcomponents('vevent');
  expect(events.length).toBeGreaterThan(8);
  await page.getByText('The file of Mon 4 May still holds: nothing has changed since.').waitFor();
  await moveDays(page);
  await page.getByRole('button', { name: 'Make the package' }).click();
  const ready = await sectionOf(page, 'Move to another computer')
    .getByText(/is ready, with/)
    .textContent();
  const file = /^(.+\.zip) is ready/.exec(ready ?? '')?.[1] ?? '';
  await page.getByRole('link', { name: 'Settings', exact: true }).click();
  await page.getByRole('button', { name: 'Close this workbook' }).click();
  await page.getByLabel('File', { exact: true }).fill(file);
  await page.getByRole('button', { name: 'Open one', exact: true }).click();
  await page.getByRole('link', { name: 'Hives', exact: true }).click();
  await page.getByRole('link', { name: /H02/ }).waitFor();
  expect(house.problems).toEqual([]);
}, 90_000);
