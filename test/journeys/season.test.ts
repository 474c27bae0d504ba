// What the season says: a comparison in words, how many larvae a wish takes, and a batch and a hive against what was to be
// expected; on the demo, in the browser shell and in the Electron window.
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareDoors, setDay } from './doors.ts';

const { doors } = prepareDoors();

const RECKONED = { timeout: 60_000 };

test.each(doors)(
  'the season is weighed and planned: $name',
  async ({ open }) => {
    setDay(DEMO_DAY);
    const house = await open();
    const { page } = house;
    await openDemo(house);
    await page.getByRole('link', { name: 'Season', exact: true }).click();
    await page.getByText(/Bet on it twenty times|cannot be told apart/).waitFor(RECKONED);
    await page
      .getByText(/Allowing for the builder colony:|comparable builder colonies|too few batches/)
      .waitFor(RECKONED);
    const bytes = await house.saveFile(() => page.getByRole('button', { name: 'Save the figures' }).click());
    const rows = parse<Record<string, string>>(bytes.toString('utf8'), { columns: true, bom: true });
    expect(rows.length % 5).toBe(0);
    expect(rows.length).toBeGreaterThan(5);

    await page.getByRole('button', { name: 'How many queens' }).click();
    const answer = page.locator('.finding strong');
    await answer.waitFor(RECKONED);
    const larvae = async () => Number((await answer.innerText()).match(/Give (\d+) larvae/)?.[1]);
    const forTen = await larvae();
    expect(forTen).toBeGreaterThan(9);
    await page.getByLabel('Batches').selectOption({ label: '2 batches, a builder each' });
    await page.getByLabel('Laying queens').fill('4');
    await expect.poll(larvae, RECKONED).toBeLessThan(forTen);
    await page.getByLabel('Try another share: mating').check();
    await page.getByLabel('Share tried: mating').fill('97');
    await page.getByText('97').first().waitFor();

    await page
      .getByRole('link', { name: /^Batches/ })
      .first()
      .click();
    await page.getByRole('link', { name: '26-02', exact: true }).click();
    await page.getByRole('heading', { name: 'Against what was to be expected' }).waitFor(RECKONED);
    await page.getByRole('link', { name: 'H04' }).first().click();
    await page.getByRole('heading', { name: 'Against the rest' }).first().waitFor(RECKONED);
    expect(house.problems).toEqual([]);
  },
  180_000,
);
