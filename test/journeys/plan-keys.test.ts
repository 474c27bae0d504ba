// A planned batch is put on another day from the plan of the season: by Shift and an arrow, by M with a day, by its button.
// What would move is shown each time before it is saved.
import { expect, test } from 'vitest';
import { aStart } from '../builders/running-batch.ts';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { ask } from './own-yard.ts';
import { axeTroubles, show } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

test('a planned batch goes a day on, a day back, and to a typed day, each shown before it is saved', async () => {
  const { page, problems } = house();
  await ask(page, 'mutation', 'batches.startBatch', {
    ...aStart({ anchorOn: '2026-06-10', newBreeder: null, newBuilder: null }),
  });
  await page.reload();
  await show(page, '/season?tab=plan');
  const planned = async () => {
    const batches = (await ask(page, 'query', 'batches.listBatches')) as { state: string; begins: { on: string } }[];
    return batches.filter(({ state }) => state === 'planned').map(({ begins }) => begins.on);
  };
  const name = page.getByRole('link', { name: '26-07' });
  await name.focus();
  await page.keyboard.press('Shift+ArrowRight');
  const dialog = page.getByRole('dialog');
  await dialog.getByText('Thu 11 Jun').first().waitFor();
  expect(await planned()).toEqual(['2026-06-10']);
  await page.keyboard.press('Enter');
  await expect.poll(planned).toEqual(['2026-06-11']);
  await expect.poll(() => dialog.count()).toBe(0);

  await name.focus();
  await page.keyboard.press('Shift+ArrowLeft');
  await dialog.getByText('Wed 10 Jun').first().waitFor();
  await page.keyboard.press('Escape');
  await expect.poll(() => dialog.count()).toBe(0);
  expect(await planned()).toEqual(['2026-06-11']);

  await name.focus();
  await page.keyboard.press('m');
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
  expect(await axeTroubles(page, 'the plan with the field of a day')).toEqual([]);
  await page.keyboard.type('16 Jun');
  await page.keyboard.press('Enter');
  await dialog.getByText('Tue 16 Jun').first().waitFor();
  await page.keyboard.press('Enter');
  await expect.poll(planned).toEqual(['2026-06-16']);
  await page.getByRole('button', { name: 'Move 26-07' }).waitFor();
  await page.keyboard.press('Control+z');
  await expect.poll(planned).toEqual(['2026-06-11']);
  expect(problems).toEqual([]);
}, 60_000);
