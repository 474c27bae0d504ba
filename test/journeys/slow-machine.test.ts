// An old computer with a slow drive: keys are faster than answers. Nothing typed meanwhile is lost, hidden or overtaken.
import type { Route } from 'playwright';
import { afterEach, expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { turnTo } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);
afterEach(() => expect(house().problems).toEqual([]));

/** Answers of one operation wait until they are let through. */
async function holdBack(path: string): Promise<() => Promise<void>> {
  const { page } = house();
  const held: Route[] = [];
  const hold = async (route: Route) => {
    if (route.request().postData()?.includes(path)) held.push(route);
    else await route.fallback();
  };
  await page.route('**/call', hold);
  return async () => {
    await expect.poll(() => held.length).toBeGreaterThan(0);
    await page.unroute('**/call', hold);
    for (const route of held) await route.fallback();
  };
}

test('what is typed in a look sheet is shown before it is saved, and filling the rest leaves it alone', async () => {
  const { page } = house();
  await page.getByRole('button', { name: 'Type looks' }).first().press('Enter');
  await page.getByText('0 of 9').waitFor();
  await page.locator('[data-now]:focus').waitFor();
  const letGo = await holdBack('boxes.recordLook');
  await page.keyboard.press('v');
  await page.keyboard.press('n');
  await page.getByRole('button', { name: 'K01, virgin' }).waitFor();
  await page.getByRole('button', { name: 'K02, no queen' }).waitFor();
  await page.getByText('0 of 9').waitFor();
  await page.keyboard.press('Control+d');
  await page.getByText('Fill 7 untouched rows with “laying”?').waitFor();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Control+Enter');
  await letGo();
  await page.getByText('9 looks saved: 1 virgin, 1 no queen, 7 laying.').waitFor();
}, 60_000);

test('Enter in Go to waits for the lists, so that it goes to the box and not to the notes', async () => {
  const { page } = house();
  await turnTo(page, 1);
  const letGo = await holdBack('queens.listQueens');
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
  await page.keyboard.press('Control+k');
  await page.keyboard.type('k03');
  await page.keyboard.press('Enter');
  await letGo();
  await page.getByRole('heading', { level: 2, name: /K03/ }).waitFor();
}, 60_000);

test('a form typed in before the half-typed things were listed is there again', async () => {
  const { page } = house();
  await turnTo(page, 1);
  const letGo = await holdBack('drafts.listDrafts');
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
  await turnTo(page, 'n');
  const cells = page.getByLabel('Cells', { exact: true });
  await cells.fill('24');
  await turnTo(page, 1);
  await letGo();
  await turnTo(page, 'n');
  await page.getByText('Typed before and not saved yet.').waitFor();
  expect(await cells.inputValue()).toBe('24');
}, 60_000);

test('reckonings that take long leave lines free for what is saved', async () => {
  const { page } = house();
  await turnTo(page, 1);
  const underWay = new Set<string>();
  let most = 0;
  const hold = async (route: Route) => {
    const body = route.request().postData() ?? '';
    if (!body.includes('season.getBatchExpectation')) return route.fallback();
    underWay.add(body);
    most = Math.max(most, underWay.size);
    await new Promise((later) => setTimeout(later, 150));
    underWay.delete(body);
    await route.fallback();
  };
  await page.route('**/call', hold);
  await page.evaluate(() => {
    window.location.hash = '/season?tab=plan';
  });
  await page.getByRole('heading', { level: 2, name: 'Week by week' }).waitFor();
  await expect.poll(() => most).toBe(2);
  // All are answered in the end: no batch is left without what is expected of it.
  await page.waitForLoadState('networkidle');
  expect(underWay.size).toBe(0);
  expect(most).toBe(2);
  await page.unroute('**/call', hold);
}, 60_000);
