// What a hive is worth as stock: typed on its page, read in the table from which a breeder is chosen.
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { show, turnTo } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

test('a score too few becomes enough with one more, and the table is ordered by it', async () => {
  const { page } = house();
  await turnTo(page, 3);
  await page.getByRole('button', { name: 'Choose a breeder' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Choose a breeder' }).waitFor();
  const clara = page.getByRole('row', { name: /^H15 Clara/ });
  await clara.getByText('too few to say: 3 of 4').first().waitFor();
  await clara.getByRole('link', { name: 'H15 Clara' }).press('Enter');
  await page.getByText('Write the score down').first().click();
  await page.getByLabel('Score', { exact: true }).selectOption('4, no smoke or veil needed');
  await page.getByRole('button', { name: 'Write the score down' }).press('Enter');
  // Mean of 3, 2.5, 3 and 4 (arithmetic): 3.1.
  await page.getByRole('row', { name: /^Gentleness 3\.1 n 4/ }).waitFor();
  await page.goBack();
  await page.getByRole('button', { name: 'Sort by Gentleness' }).press('Enter');
  const rows = async () => (await page.getByRole('rowheader').allInnerTexts()).map((text) => text.split('\n')[0]);
  await expect.poll(rows).toEqual(['H03 Anna', 'H07 Berta', 'H15 Clara', 'H12', 'H02', 'H04', 'H09', 'H18 Dora']);
  await page.getByRole('row', { name: /^H18 Dora.*raises drones herself: H18/ }).waitFor();
  expect(house().problems).toEqual([]);
}, 60_000);

test('the page of a hive names its queen, her mother and the hives that are kin to it, and leads to each', async () => {
  const { page } = house();
  await show(page, '/hives/demo-hive-H12');
  const kin = page.getByRole('region', { name: 'Relatives' });
  await kin.getByRole('link', { name: '25-010' }).waitFor();
  await expect.poll(() => kin.innerText()).toMatch(/Sisters\s+H09\s+same mother H07/);
  await kin.getByRole('link', { name: 'H07 Berta' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'H07 Berta' }).waitFor();
  await expect.poll(() => kin.innerText()).toMatch(/Daughters\s+H09\s+H12/);
  await kin.getByRole('link', { name: 'H09' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'H09' }).waitFor();
  await kin.getByRole('link', { name: '25-008' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Queen 25-008' }).waitFor();
  await turnTo(page, 3);
  await page.getByRole('button', { name: 'Choose a breeder' }).press('Enter');
  expect(house().problems).toEqual([]);
}, 60_000);

test('a test that cannot be is refused beside its field, and nothing typed is lost', async () => {
  const { page } = house();
  await page.getByRole('link', { name: 'H03 Anna' }).click();
  await page.getByText('Write the test down').first().click();
  await page.getByLabel('Cells cleared').fill('52');
  await page.getByRole('button', { name: 'Write the test down' }).press('Enter');
  await page.getByText('Counted: 52 cleared is more than the 50 tested. Correct one of the two.').waitFor();
  await expect.poll(() => page.getByLabel('Cells cleared').inputValue()).toBe('52');
  await page.getByLabel('Cells cleared').fill('about forty');
  await page.getByLabel('Cells cleared').press('Enter');
  await page.getByText('Counted: Type a whole number.').waitFor();
  await expect.poll(() => page.getByLabel('Cells cleared').inputValue()).toBe('about forty');
  expect(house().problems).toEqual([]);
}, 60_000);

test('a word noted anywhere is found from Go to', async () => {
  const { page } = house();
  await page.keyboard.press('Control+k');
  await page.keyboard.type('wasps');
  await page.getByRole('option', { name: '“wasps” in the notes search' }).waitFor();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Search the notes' }).waitFor();
  await page.getByRole('row', { name: /25-07.*Wasps at the mill/ }).waitFor();
  await page.getByLabel('Words to look for').fill('wasps pond');
  await page.getByText('Nothing was noted with these words.').waitFor();
  expect(house().problems).toEqual([]);
}, 60_000);
