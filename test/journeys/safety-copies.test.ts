// Safety copies from the window, by either door: make one, go on typing, look inside, go back, and again after damage.
import { mkdtempSync, readFileSync, renameSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { describe, expect, onTestFinished, test } from 'vitest';
import { inAnotherProcess } from '../builders/another-process.ts';
import { prepareDoors, setDay } from './doors.ts';
import { beginWorkbook } from './own-yard.ts';

const { doors, open } = prepareDoors();

const violations = async (page: Page) => (await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id);

async function addHive(page: Page, code: string): Promise<void> {
  await page.getByRole('link', { name: 'Hives' }).click();
  await page.getByLabel('Code', { exact: true }).fill(code);
  await page.getByRole('button', { name: 'Add a hive' }).click();
  await page.getByRole('link', { name: code }).waitFor();
}

/** A yard without hives is only to be seen where one may be chosen. */
const yardOffered = (page: Page, name: string) =>
  page.locator('option', { hasText: name }).first().waitFor({ state: 'attached' });

describe.each(doors)('safety copies in the $name', (door) => {
  test('one looks inside a copy, goes back to it, and back again', async () => {
    setDay('2026-05-04');
    const house = await door.open();
    const { page } = house;
    await beginWorkbook(page);
    await addHive(page, 'H01');
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByRole('button', { name: 'Make one now' }).click();
    await page.getByText('A copy was made and compared').waitFor();
    await addHive(page, 'H02');

    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByRole('button', { name: /^Look inside the copy/ }).click();
    await page.getByText('You are looking into the safety copy of Mon 4 May').waitFor();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('link', { name: 'Hives' }).click();
    await page.getByRole('link', { name: 'H01' }).waitFor();
    await expect.poll(() => page.getByRole('link', { name: 'H02' }).count()).toBe(0);
    await page.getByRole('button', { name: 'Back to my workbook' }).click();
    await page.getByRole('link', { name: 'H02' }).waitFor();

    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByRole('button', { name: /^Go back to the copy/ }).click();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Go back', exact: true }).click();
    await page.getByText(/^You are back\. The workbook as it was until now is kept as .+until/).waitFor();
    await page.getByText('You went back to a copy.').waitFor();
    await page.getByRole('button', { name: 'Go on as usual' }).click();
    await page.getByText('You went back to a copy.').waitFor({ state: 'detached' });
    await page.getByRole('link', { name: 'Hives' }).click();
    await page.getByRole('link', { name: 'H01' }).waitFor();
    await expect.poll(() => page.getByRole('link', { name: 'H02' }).count()).toBe(0);

    await damageWorkbook(page);
    await page.getByText('could not be opened').waitFor();
    expect(await violations(page)).toEqual([]);
    await page
      .getByRole('button', { name: /^Go back to the copy/ })
      .first()
      .click();
    await page.getByRole('button', { name: 'Go back', exact: true }).click();
    await page.getByRole('link', { name: 'Hives' }).click();
    await page.getByRole('link', { name: 'H01' }).waitFor();
    expect(house.problems).toEqual([]);
  }, 240_000);
});

test('a workbook another program replaced: what is typed stays, and is saved in another place', async () => {
  setDay('2026-05-04');
  const house = await open();
  const { page } = house;
  await beginWorkbook(page);
  await addHive(page, 'H01');
  await page.getByRole('link', { name: 'Settings' }).click();
  const file = await page.locator('dl.facts dd').first().innerText();
  writeFileSync(`${file}.other`, 'of another program');
  renameSync(`${file}.other`, file);

  await page.getByRole('link', { name: 'Hives' }).click();
  await page.getByLabel('Code', { exact: true }).fill('H02');
  await page.getByRole('button', { name: 'Add a hive' }).click();
  const strip = page.getByRole('complementary', { name: 'Not saved' });
  await strip.getByText('another program has put a different file').waitFor();
  await expect.poll(() => page.getByLabel('Code', { exact: true }).inputValue()).toBe('H02');
  expect(await violations(page)).toEqual([]);
  await strip.getByRole('button', { name: 'Save the workbook elsewhere…' }).click();
  const elsewhere = mkdtempSync(join(tmpdir(), 'ripecell-elsewhere-'));
  await strip.getByLabel('Folder, on another drive if you can').fill(elsewhere);
  await strip.getByRole('button', { name: 'Save it there' }).click();
  await strip.getByText(`The workbook is now ${elsewhere}`).waitFor();
  await expect.poll(() => page.getByLabel('Code', { exact: true }).inputValue()).toBe('H02');
  await page.getByRole('button', { name: 'Add a hive' }).click();
  await page.getByRole('link', { name: 'H02' }).waitFor();
  await page.getByRole('link', { name: 'H01' }).waitFor();
  expect(readFileSync(file, 'utf8')).toBe('of another program');
  expect(house.problems).toEqual([]);
  rmSync(elsewhere, { recursive: true });
}, 60_000);

test('a workbook another program writes in: looked at without changing it, looked at again, taken over once closed', async () => {
  setDay('2026-05-04');
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-held-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const holder = await inAnotherProcess(join(folder, 'Held.ripecell'));
  await holder.addYard('Orchard');
  const house = await open();
  const { page } = house;
  await page.getByLabel('File', { exact: true }).fill(holder.file);
  await page.getByRole('button', { name: 'Open one' }).click();
  await page.getByRole('button', { name: 'Look at it without changing it' }).click();
  const strip = page.getByRole('complementary', { name: 'Reading only' });
  await strip.getByText('open in another window or program').waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('link', { name: 'Hives' }).click();
  await yardOffered(page, 'Orchard');
  await holder.addYard('Meadow');
  await strip.getByRole('button', { name: 'Look again' }).click();
  await yardOffered(page, 'Meadow');

  await page.getByLabel('Code', { exact: true }).fill('H01');
  await page.getByRole('button', { name: 'Add a hive' }).click();
  await page.getByText('open for reading only').first().waitFor();
  await strip.getByRole('button', { name: 'Open it to write' }).click();
  await strip.getByRole('alert').getByText('Go on there, close it there first').waitFor();
  await holder.close();
  await strip.getByRole('button', { name: 'Open it to write' }).click();
  await strip.waitFor({ state: 'detached' });
  await addHive(page, 'H02');
  expect(house.problems).toEqual([]);
}, 90_000);

/** Closes the workbook, cuts its file in half, and tries to open it. */
async function damageWorkbook(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Settings' }).click();
  const file = await page.locator('dl.facts dd').first().innerText();
  await page.getByRole('button', { name: 'Close this workbook' }).click();
  await page.getByRole('button', { name: 'Look at the demo' }).waitFor();
  truncateSync(file, Math.floor(statSync(file).size / 2));
  await page.getByLabel('File', { exact: true }).fill(file);
  await page.getByRole('button', { name: 'Open one', exact: true }).click();
}
