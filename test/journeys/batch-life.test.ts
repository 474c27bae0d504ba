// From one batch to the next: a job is put off, a batch is closed and opened again, and another is begun like it, with
// what earlier ones taught beside the form.
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareHouse } from './doors.ts';
import { ask } from './own-yard.ts';
import { choose, PLAIN, show } from './pages.ts';

const house = prepareHouse(DEMO_DAY, openDemo);

test('a job on Today is put off to another day of its window, with the reason', async () => {
  const { page } = house();
  await show(page, '/today');
  await page.getByRole('button', { name: 'Put off: Count the cells taken, 26-05' }).press('Enter');
  await page.getByRole('heading', { name: '26-05' }).waitFor();
  // The day is where typing begins, and tomorrow is offered.
  await expect.poll(() => page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('Fri 22 May');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Rain all day');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Save, and let the days move' }).press('Enter');
  await page.getByRole('row', { name: /^Fri 22 May Count the cells taken put here by you: Rain all day/ }).waitFor();
  // Eggs of 2 April, said under Settings, are mature drones on day 40 [Büchler et al. 2013, COLOSS BEEBOOK].
  await page.getByText('your first drones are mature from Tue 12 May').waitFor();
  await page.keyboard.press('Control+1');
  await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
  const due = page.getByRole('region', { name: 'Do', exact: true });
  await due.getByText('First look for eggs').waitFor();
  await expect.poll(() => due.getByText('Count the cells taken').count()).toBe(0);
  // On its last day a job cannot be put off any more.
  expect(await due.getByRole('button', { name: /^Put off: Put the cells in the boxes, 26-03/ }).count()).toBe(0);
  expect(house().problems).toEqual([]);
}, 60_000);

test('a late job that will not be done says why, is not called done, and is taken up again on the page of its batch', async () => {
  const { page } = house();
  await show(page, '/today');
  const late = page.getByRole('region', { name: 'Late', exact: true });
  await late.getByRole('button', { name: 'Will not be done: Look for the builder’s own cells, 26-03' }).press('Enter');
  // The reason is where typing begins, and the job can be kept after all.
  await page.getByLabel('Why, if you like').and(page.locator(':focus')).waitFor();
  await page.keyboard.press('Escape');
  await expect.poll(() => page.getByLabel('Why, if you like').count()).toBe(0);
  await late.getByRole('button', { name: 'Will not be done: Look for the builder’s own cells, 26-03' }).press('Enter');
  await page.getByLabel('Why, if you like').and(page.locator(':focus')).waitFor();
  await page.keyboard.type('Hands off, cells are ripe');
  await page.keyboard.press('Enter');
  await expect.poll(() => late.getByText('Look for the builder’s own cells').count()).toBe(0);
  await page.keyboard.press('Control+z');
  await page.getByRole('status').filter({ hasText: 'Undone: 26-03, “Look for the builder’s own cells”' }).waitFor();
  await late.getByText('Look for the builder’s own cells').waitFor();
  await page.keyboard.press('Control+y');
  await expect.poll(() => late.getByText('Look for the builder’s own cells').count()).toBe(0);
  await page.getByRole('link', { name: '26-03', exact: true }).first().press('Enter');
  await page.getByRole('heading', { level: 1, name: /^26-03/ }).waitFor();
  const row = page.getByRole('row', { name: /^.* Look for the builder’s own cells/ });
  await row.getByText('will not be done, said Thu 21 May: Hands off, cells are ripe').waitFor();
  await expect.poll(() => row.getByText('done', { exact: false }).filter({ hasText: '✓' }).count()).toBe(0);
  await row.getByRole('button', { name: /^Take up again/ }).press('Enter');
  await row.getByRole('button', { name: /^Done today/ }).waitFor();
  // Cells that are ripe must leave: this one is not offered to be left out, and why is said.
  await page.getByRole('button', { name: 'Put the cells in the boxes', exact: true }).press('Enter');
  await page.getByText(/^It cannot be left out: the bees leave no choice/).waitFor();
  await expect.poll(() => page.getByRole('button', { name: 'Leave this job out' }).count()).toBe(0);
  expect(house().problems).toEqual([]);
}, 60_000);

test('the job that has the focus is opened, marked, put off and printed by single keys, but not while a reason is typed', async () => {
  const { page } = house();
  const press = (key: string) => page.keyboard.press(key);
  const row = (name: RegExp) => page.locator('.jobs > li').filter({ hasText: name });
  const focused = (name: RegExp) => row(name).and(page.locator(':focus')).waitFor();
  await show(page, '/today');
  await row(/^boxes not chosen\s*Fill the mating boxes/).focus();
  await press('ArrowDown');
  await focused(/Put the cells in the boxes/);
  expect(await row(/First look for eggs/).getAttribute('aria-keyshortcuts')).toBe('Enter Space S P');
  // No later day is left for the ripe cells, so S does nothing there; the next job can be put off.
  await press('s');
  await focused(/Put the cells in the boxes/);
  await row(/First look for eggs/).focus();
  await press('s');
  await page.getByRole('heading', { level: 1, name: /^26-01/ }).waitFor();
  await page.getByLabel('Put it on').and(page.locator(':focus')).waitFor();
  await page.keyboard.type('sp ');
  await expect.poll(() => page.getByLabel('Put it on').inputValue()).toContain('sp');
  await show(page, '/today');
  await row(/First look for eggs/).focus();
  await press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Type looks' }).waitFor();
  await show(page, '/today');
  await row(/First look for eggs/).focus();
  await press('p');
  await page.getByLabel('Lines on it').or(page.locator('main select')).and(page.locator(':focus')).waitFor();
  await page.getByRole('heading', { name: 'Yard sheet' }).waitFor();
  await show(page, '/today');
  // Done today by Space; the focus goes to the neighbour, and the mark is taken back.
  await row(/Fill the mating boxes/)
    .first()
    .focus();
  await press(' ');
  await focused(/Put the cells in the boxes/);
  await press('Control+z');
  await page.getByRole('status').filter({ hasText: 'Undone: 26-03, “Fill the mating boxes with bees” done' }).waitFor();
  await row(/Look for the builder’s own cells/)
    .first()
    .getByRole('button', { name: /^Will not be done/ })
    .press('Enter');
  await page.getByLabel('Why, if you like').and(page.locator(':focus')).waitFor();
  await page.keyboard.type('s p');
  await expect.poll(() => page.getByLabel('Why, if you like').inputValue()).toBe('s p');
  await expect.poll(() => page.getByRole('heading', { level: 1 }).innerText()).toBe('Today');
  expect(house().problems).toEqual([]);
}, 60_000);

test('what is to be left alone leads to its hive, its boxes and its batch', async () => {
  const { page } = house();
  for (const [name, heading] of [
    ['H02', /^H02/],
    ['26-04', /^26-04/],
    ['K14', /^Mating boxes/],
    ['H12', /^H12/],
  ] as const) {
    await show(page, '/today');
    const leave = page.getByRole('region', { name: 'Leave alone', exact: true });
    await leave.getByRole('link', { name, exact: true }).press('Enter');
    await page.getByRole('heading', { level: 1, name: heading }).waitFor();
  }
  expect(house().problems).toEqual([]);
}, 60_000);

test('why cells were lost is said stage by stage, never more than were lost, and the season adds it up', async () => {
  const { page } = house();
  await show(page, '/batches');
  await page.getByRole('link', { name: '26-03', exact: true }).press('Enter');
  await page.getByRole('heading', { level: 1, name: /^26-03/ }).waitFor();
  const losses = page.getByRole('region', { name: 'Losses', exact: true });
  await losses.getByRole('row', { name: 'not taken 6 of 20 0 of 6 no reason said' }).waitFor();
  await losses.getByLabel('At which stage').selectOption({ label: 'not taken' });
  await losses.getByLabel('Why').selectOption({ label: 'chilled' });
  await losses.getByLabel('How many').fill('7');
  await losses.getByLabel('How many').press('Enter');
  await losses.getByText('with this the reasons would come to 7, but only 6 were lost').waitFor();
  await losses.getByLabel('How many').fill('2');
  await losses.getByLabel('How many').press('Enter');
  await losses.getByRole('row', { name: 'not taken 6 of 20 2 of 6 chilled 2, reason not known 4' }).waitFor();
  await show(page, '/season');
  await page
    .getByRole('region', { name: 'Why cells and queens were lost' })
    .getByRole('row', { name: /^not taken .*torn down by a virgin or the bees 20, chilled 2, reason not known/ })
    .waitFor();
  expect(house().problems).toEqual([]);
}, 60_000);

test('the plan says in one line what is wanted and what may still come from the batches that are on', async () => {
  const { page } = house();
  await show(page, '/season?tab=plan');
  await page
    .getByText(/^Wanted: 11\. Still to come from \d batches: about \d+ proved queens \(\d+ to \d+, as if/)
    .waitFor();
  await page.getByLabel('Laying queens').fill('2');
  await page.getByLabel('By when').fill('20 Jul');
  await page.getByRole('button', { name: 'Write the wish down' }).press('Enter');
  await page.getByText(/^Wanted: 13\. Still to come from/).waitFor();
  expect(house().problems).toEqual([]);
}, 60_000);

test('a batch with nothing open is closed with its lesson, stands among the closed ones, and is opened again', async () => {
  const { page } = house();
  await show(page, '/batches');
  await page
    .getByRole('row', { name: /^26-06/ })
    .getByRole('link', { name: 'close it?' })
    .press('Enter');
  const lesson = page.getByLabel('Lesson for next year, in one sentence');
  await expect.poll(() => lesson.evaluate((field) => field === document.activeElement)).toBe(true);
  await page.keyboard.type('Too early for H12.');
  await page.getByRole('button', { name: 'Close this batch' }).press('Enter');
  await page.getByText('from H07 Berta, builder H12, closed Thu 21 May').waitFor();
  await expect.poll(() => page.getByText('Mating flights').count()).toBe(0);
  await page.keyboard.press('Control+2');
  const closed = page.getByRole('region', { name: 'Closed' });
  await closed.getByRole('row', { name: /^26-06.*Too early for H12\.$/ }).waitFor();
  await closed.getByRole('link', { name: '26-06' }).press('Enter');
  await page.getByRole('button', { name: 'Open it again' }).press('Enter');
  await page.getByRole('button', { name: 'Close this batch' }).waitFor();
  await page.getByText('Mating flights').waitFor();
  expect(await lesson.inputValue()).toBe('Too early for H12.');
  expect(house().problems).toEqual([]);
}, 60_000);

test('another batch is begun like one before, beside what earlier ones taught', async () => {
  const { page } = house();
  const batches = (await ask(page, 'query', 'batches.listBatches')) as readonly { id: string; code: string }[];
  await show(page, `/batches/${batches.find(({ code }) => code === '25-04')?.id}`);
  await page.getByRole('button', { name: 'Start another like it' }).press('Enter');
  await page.getByLabel('Mother (breeder)').waitFor();
  const typed = await Promise.all(
    ['Mother (breeder)', 'Builder', 'Cells'].map((name) => page.getByLabel(name, { exact: true }).inputValue()),
  );
  expect([await page.getByLabel('Method').inputValue(), ...typed]).toEqual(['larva-grafting', 'H03', 'H09', '24']);
  const lessons = page.getByRole('region', { name: 'What earlier batches taught' });
  await lessons.getByText('Too early for H12.').waitFor();
  await page.getByLabel('Method').selectOption({ label: 'Flat comb' });
  await expect.poll(() => lessons.count()).toBe(0);
  expect(house().problems).toEqual([]);
}, 60_000);

test('a batch is begun from the page of its builder, on the day the builder is free', async () => {
  const { page } = house();
  await show(page, '/hives/demo-hive-H04');
  await page.getByText('strength 5 of 5 · food 3 of 5').waitFor();
  await page.getByRole('link', { name: 'Start a batch in it' }).press('Enter');
  await page.getByText('Saturday 30 May 2026').first().waitFor();
  expect(await page.getByLabel('Builder', { exact: true }).inputValue()).toBe('H04');
  await show(page, '/hives/demo-hive-H03');
  await page.getByRole('link', { name: 'Start a batch from it' }).press('Enter');
  await expect.poll(() => page.getByLabel('Mother (breeder)').inputValue()).toBe('H03');
  expect(house().problems).toEqual([]);
}, 60_000);

test('what is typed in the evening is told as whole sentences, with what is odd', async () => {
  const { page } = house();
  const batches = (await ask(page, 'query', 'batches.listBatches')) as readonly { id: string; code: string }[];
  await show(page, `/boxes/looks?batch=${batches.find(({ code }) => code === '26-01')?.id}&step=first-look`);
  await page.keyboard.press('b');
  await page.getByText('K01 proved. 1 of 9. 1 to check.', { exact: true }).waitFor();
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.getByText('1 to check').count()).toBe(0);
}, 60_000);

test('the card of a box leads to its batch and back, and the batch says which boxes are free', async () => {
  const { page } = house();
  const boxes = (await ask(page, 'query', 'boxes.listBoxes')) as readonly { id: string; code: string }[];
  await show(page, `/boxes?box=${boxes.find(({ code }) => code === 'K03')?.id}`);
  await page.getByRole('link', { name: '26-01', exact: true }).first().press('Enter');
  await page.getByRole('heading', { level: 1, name: /^26-01/ }).waitFor();
  await page.getByText('K01-K18, or K01, K03, K07. Free now: K15–K16').waitFor();
  await page.getByRole('link', { name: 'K05', exact: true }).press('Enter');
  await page.getByRole('heading', { name: 'K05, virgin' }).waitFor();
}, 60_000);

test('the card of a box leads to the hive its cell came from and to its queen, and says when workers may lay', async () => {
  const { page } = house();
  const boxes = (await ask(page, 'query', 'boxes.listBoxes')) as readonly { id: string; code: string }[];
  const look = { id: 'look-k04', boxId: boxes.find(({ code }) => code === 'K04')?.id, lookedOn: '2026-05-31' };
  const queen = { id: 'queen-k04', number: '26-777' };
  const seen = { result: 'laying', strength: null, food: null, note: null, queen };
  await ask(page, 'mutation', 'boxes.recordLook', { ...look, ...seen });
  const card = page.getByRole('region', { name: /^K04,/ });
  await page.reload();
  await show(page, '/boxes/K04');
  await card.getByRole('link', { name: 'H03', exact: true }).press('Enter');
  await page.getByRole('heading', { level: 1, name: /^H03/ }).waitFor();
  await page.goBack();
  await card.getByRole('link', { name: '26-777', exact: true }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Queen 26-777' }).waitFor();
  await show(page, '/boxes/K05');
  await page
    .getByRole('region', { name: /^K05, virgin/ })
    .getByText(/, if no brood comes before$/)
    .waitFor();
}, 60_000);

test('the address of a box that is not there says so, and leads to the boxes', async () => {
  const { page } = house();
  await show(page, '/boxes/K99');
  await page.getByText('There is no mating box K99 in the workbook.').waitFor();
  await page.getByRole('link', { name: 'To all mating boxes' }).press('Enter');
  await page.getByRole('heading', { name: 'All boxes' }).waitFor();
  expect(house().problems).toEqual([]);
}, 60_000);

test('before cells go into boxes, the page says how many to keep in hand and where those of each mother stand', async () => {
  const { page } = house();
  const batches = (await ask(page, 'query', 'batches.listBatches')) as readonly { id: string; code: string }[];
  await show(page, `/batches/${batches.find(({ code }) => code === '26-03')?.id}`);
  await page.getByText('Keep 2 to 3 cells in hand for boxes that fail (10 to 20 of a hundred).').waitFor();
  const spread = page.getByRole('list', { name: 'Where the cells of each mother stand' }).getByRole('listitem');
  await expect
    .poll(() => spread.allInnerTexts())
    .toEqual([
      'Mill meadow: 0 boxes free; in boxes now: 8 from H07',
      'Orchard: 2 boxes free; in boxes now: 14 from H03',
    ]);
  await page.getByText(/^All that is in boxes from H07 stands at Mill meadow\./).waitFor();
}, 60_000);

test('in German the timetable with its buttons and all four counts of a bar are in sight side by side', async () => {
  const { page } = house();
  await choose(page, { ...PLAIN, language: 'de' });
  const batches = (await ask(page, 'query', 'batches.listBatches')) as readonly { id: string; code: string }[];
  const hidden = () =>
    page
      .locator('table:is(.bar-counts, .timetable)')
      .evaluateAll((tables) => tables.map((it) => Math.max(0, it.scrollWidth - (it.parentElement?.clientWidth ?? 0))));
  // One with marks to take back, one with a job to mark.
  for (const wanted of ['25-07', '26-01']) {
    await show(page, `/batches/${batches.find(({ code }) => code === wanted)?.id}`);
    await page.getByText('weggenommen').waitFor();
    await expect.poll(hidden, { message: wanted }).toEqual([0, 0]);
  }
}, 60_000);
