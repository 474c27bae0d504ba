// What was fed is typed in the evening by keys alone: hives one by one, a row of boxes at once; what cannot be read is
// said beside its row, and an emptied row is no feeding.
import { expect, test } from 'vitest';
import { DEMO_DAY, prepareDoors } from './doors.ts';
import { ask, beginYard } from './own-yard.ts';
import { turnTo } from './pages.ts';

const { open } = prepareDoors(DEMO_DAY);

test('hives are fed row by row and thirty boxes at once, without the mouse', async () => {
  const house = await open();
  const { page } = house;
  await beginYard(page, '2026-06-01');
  const fed = async (place: 'hive' | 'box', id: string) => {
    const all = (await ask(page, 'query', 'feeding.listFeedings', { place, id })) as {
      feed: string;
      litres: number | null;
      kilograms: number | null;
    }[];
    return all.map(({ feed, litres, kilograms }) => [feed, litres, kilograms]);
  };
  await turnTo(page, 3);
  await page.getByRole('button', { name: 'Type feeding' }).press('Enter');
  await page.getByLabel('H03, How much').and(page.locator(':focus')).waitFor();
  await page.keyboard.type('1,5');
  await page.keyboard.press('Enter');
  await page.keyboard.type('plenty');
  await page.keyboard.press('Enter');
  await page.getByText('How much: “plenty” is no amount.').waitFor();
  await expect.poll(() => page.getByLabel('H12, How much').inputValue()).toBe('plenty');
  await page.getByLabel('H12, How much').fill('?');
  await page.keyboard.press('Control+Enter');
  await page.getByText('2 feedings saved.').waitFor();
  // The row shows what the workbook holds, with its unit.
  await expect.poll(() => page.getByLabel('H03, How much').inputValue()).toBe('1.5\u00a0L');
  expect([await fed('hive', 'h03'), await fed('hive', 'h12')]).toEqual([
    [['syrup-1-1', 1.5, null]],
    [['syrup-1-1', null, null]],
  ]);
  await page.getByLabel('H12, How much').fill('');
  await page.keyboard.press('Enter');
  await expect.poll(() => fed('hive', 'h12')).toEqual([]);
  await page.keyboard.press('Escape');
  await page.locator('main h1').click();
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.getByLabel('H12, How much').inputValue()).toBe('?');

  await turnTo(page, 4);
  await page.getByRole('button', { name: 'Type feeding' }).press('Enter');
  await page.getByText('The same for several at once').click();
  await page.getByLabel('Hives and boxes').fill('K01-K30');
  await page.getByLabel('How much, kg').fill('300 g');
  await page.keyboard.press('Enter');
  await page.getByText('30 feedings saved.').waitFor();
  await expect.poll(() => page.getByLabel('K30, How much').inputValue()).toBe('300\u00a0g');
  expect(await fed('box', 'box-30')).toEqual([['fondant', null, 0.3]]);
  expect(house.problems).toEqual([]);
}, 90_000);
