// A lesson: from a workbook of one's own to the practice workbook, a box emptied in it, set back with one act, and home to
// the own workbook, which is as it was left.
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { prepareDoors } from './doors.ts';
import { ask, beginYard } from './own-yard.ts';

const { open } = prepareDoors();

const place = (page: Page, name: string) => page.getByRole('link', { name, exact: true }).click();
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const strip = (page: Page) => page.getByRole('complementary', { name: 'Practice workbook' });
const boxes = async (page: Page) => ((await ask(page, 'query', 'boxes.listBoxes')) as unknown[]).length;

async function spoilPractice(page: Page): Promise<void> {
  await place(page, 'Class');
  await button(page, 'Open the practice workbook').click();
  await strip(page)
    .getByText(/an invented yard\. Its clock stands still on Thu(rsday)? 21 May/)
    .waitFor();
  expect(await boxes(page)).toBe(24);
  await ask(page, 'mutation', 'boxes.addBoxes', {
    ...{ codes: 'Z01-Z03', yardId: null, row: null, boxType: 'mini' },
    ids: ['z1', 'z2', 'z3'],
  });
  for (const view of ['Mating boxes', 'Queens', 'Season']) {
    await place(page, view);
    await strip(page).waitFor();
  }
  expect(await boxes(page)).toBe(27);
}

async function setBack(page: Page): Promise<void> {
  await button(page, 'Set it back…').click();
  await button(page, 'Set it back to its start').click();
  await page.getByText('This cannot be undone. No other workbook is touched.').waitFor();
  await button(page, 'Leave as it was').click();
  expect(await boxes(page)).toBe(27);
  await button(page, 'Set it back to its start').click();
  await button(page, 'Yes, set it back').click();
  await page.getByText('The practice workbook is back at its start.').waitFor({ timeout: 60_000 });
  expect(await boxes(page)).toBe(24);
}

async function goHome(page: Page): Promise<void> {
  await button(page, 'Leave it').click();
  await button(page, 'Our queens').click();
  await page.getByRole('heading', { level: 1, name: 'Class' }).waitFor();
  await expect.poll(() => strip(page).count()).toBe(0);
  expect(await boxes(page)).toBe(30);
}

test('practising, setting back, and home again', async () => {
  const house = await open();
  const { page } = house;
  await beginYard(page, '2026-05-04');
  await spoilPractice(page);
  await setBack(page);
  await goHome(page);
  expect(house.problems).toEqual([]);
}, 300_000);
