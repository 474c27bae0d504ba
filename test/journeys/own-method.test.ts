// A person's own copy of a method: changed under Settings, offered when a batch is started, followed by its calendar.
import { expect, test } from 'vitest';
import { prepareDoors, setDay } from './doors.ts';
import { beginWorkbook } from './own-yard.ts';
import { turnTo } from './pages.ts';

const { open } = prepareDoors();

test('a copied method is changed, saved and used', async () => {
  setDay('2026-05-04');
  const house = await open();
  const { page } = house;
  await beginWorkbook(page);
  await page.getByRole('link', { name: 'Settings' }).click();
  await page.getByLabel('Count the cells taken, Earliest').fill('3');
  await page.getByLabel('Name of your copy').fill('Late counter');
  await page.getByRole('button', { name: 'Save as my own' }).click();
  await page.getByText('Your method: the days of “Count the cells taken” are turned round').waitFor();
  await page.getByLabel('Count the cells taken, Expected').fill('3');
  await page.getByLabel('Count the cells taken, Latest').fill('4');
  await page.getByRole('button', { name: 'Save as my own' }).click();
  await page.getByRole('button', { name: 'Save my method' }).waitFor();
  await page.getByText('day 1 (1 to 2) → 3 (3 to 4)').waitFor();
  await page.getByText('First look for eggs', { exact: true }).click();
  await page.getByLabel('Your name for “First look for eggs”').fill('Eggs at last?');
  await page.getByRole('button', { name: 'Save my method' }).click();
  await page.getByText('called “Eggs at last?”').waitFor();
  await turnTo(page, 'n');
  await page.getByLabel('Method', { exact: true }).selectOption({ label: 'Late counter' });
  const counting = page.getByRole('row', { name: /Count the cells taken/ });
  await counting.getByText('Thu 7 May', { exact: true }).waitFor();
  await page.getByRole('row', { name: /Eggs at last/ }).waitFor();
  await page.getByRole('button', { name: 'Start the batch' }).click();
  await page.getByRole('heading', { name: '26-01 Late counter' }).waitFor();
  expect(house.problems).toEqual([]);
}, 60_000);
