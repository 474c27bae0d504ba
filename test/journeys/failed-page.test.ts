// One page fails over an answer that it cannot show: the rest of the program goes on, and a report can be saved.
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { axeTroubles, show, turnTo } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

test('a page that fails says so, writes a report, and comes back when its answer is right again', async () => {
  const { page } = house();
  await page.route('**/call', async (route) => {
    if (!/listHives/.test(route.request().postData() ?? '')) return route.continue();
    const response = await route.fetch();
    await route.fulfill({ response, body: (await response.text()).replaceAll('"hives":[', '"hives":[null,') });
  });
  await show(page, '/hives');
  await page.getByRole('heading', { name: 'This page failed' }).waitFor();
  expect(await axeTroubles(page, 'a page that failed')).toEqual([]);
  const report = await house().saveFile(() => page.getByRole('button', { name: 'Save a report' }).click());
  expect(report.toString()).toMatch(/^Ripecell \d+\.\d+\.\d+ \(loopback\), .+\nPage #\/hives, .+\nTypeError: .+\n/);
  await turnTo(page, 1);
  await page.unroute('**/call');
  await page.reload();
  await show(page, '/hives');
  await page.getByRole('link', { name: /^H02/ }).first().waitFor();
});
