// The main job as a new user walks it: begin a workbook, start a cut-comb batch with a new breeder and builder, type
// counts, put cells in boxes, print labels to a PDF, see the chart. The same steps through both doors.
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { prepareDoors, setDay } from './doors.ts';
import { beginWorkbook } from './own-yard.ts';
import { turnTo } from './pages.ts';

const { doors } = prepareDoors();

/** Larvae given on Mon 4 May; ripe cells move ten days later [Büchler et al. 2013, COLOSS BEEBOOK 2.1.3.4]. */
const TODAY = '2026-05-14';

describe.each(doors)('the main job through the $name', (door) => {
  test('from an empty computer to a printed label and a chart', async () => {
    setDay(TODAY);
    const house = await door.open();
    const { page } = house;
    await beginEmpty(page);
    await startBatch(page);
    await typeCounts(page);
    await addBoxes(page);
    await placeCells(page);
    const pdf = await printLabels(page, house);
    expect(await wordsOfPdf(pdf)).toEqual(
      expect.arrayContaining(['K01', 'K08', '26-01', 'mother H03', 'HANDS OFF to Tue 26 May']),
    );
    await seeChart(page);
    expect(house.problems).toEqual([]);
  }, 120_000);
});

async function beginEmpty(page: Page): Promise<void> {
  await beginWorkbook(page);
  await page.getByText('No batch is running.').waitFor();
}

async function startBatch(page: Page): Promise<void> {
  await turnTo(page, 'n');
  await page.getByLabel('Method').selectOption({ label: 'Cut-comb edge' });
  await page.getByLabel('Comb', { exact: true }).selectOption({ label: 'drawn comb' });
  await page.getByLabel('Mother (breeder)').fill('H03');
  await page.getByText('H03 is new and is added with the batch.').waitFor();
  await page.getByLabel('Builder', { exact: true }).fill('H12');
  await page.getByLabel('Day', { exact: true }).fill('4 May');
  await page.getByLabel('Cells', { exact: true }).fill('12');
  await page.getByText('Emergence Sat 16 May (Fri 15 May to Sun 17 May)').waitFor();
  await page.getByRole('button', { name: 'Start the batch' }).click();
  await page.getByRole('heading', { name: /26-01/ }).waitFor();
}

async function typeCounts(page: Page): Promise<void> {
  await page.getByLabel('Counted on').fill('9 May');
  const field = (stage: string) => page.getByLabel(`bar 1, ${stage}`);
  await field('given').fill('12');
  await field('taken').fill('15');
  await field('taken').press('Enter');
  // More taken than given is refused with the field and the remedy, and what was typed stays.
  await page.getByText('Taken: 15 cells taken is more than the 12 given. Correct one of the two.').waitFor();
  await expect.poll(() => field('taken').inputValue()).toBe('15');
  await field('taken').fill('9');
  await field('sealed').fill('8');
  await field('sealed').press('Enter');
  await page.getByRole('cell', { name: /^9 \(75/ }).waitFor();
}

async function addBoxes(page: Page): Promise<void> {
  await turnTo(page, 4);
  await page.getByRole('textbox', { name: 'Boxes' }).fill('K01-K08');
  await page.getByRole('button', { name: 'Add boxes' }).click();
  await page.locator('.tile', { hasText: 'K08' }).waitFor();
}

async function placeCells(page: Page): Promise<void> {
  await turnTo(page, 2);
  await page.getByRole('link', { name: '26-01' }).click();
  await page.getByRole('heading', { level: 1, name: /^26-01/ }).waitFor();
  await page.keyboard.press('Control+b');
  await page.getByRole('textbox', { name: 'Boxes' }).fill('K01-K09');
  await page.getByRole('button', { name: 'Put cells in boxes' }).click();
  await page.getByText('Boxes: there is no box K09.').waitFor();
  await page.getByRole('textbox', { name: 'Boxes' }).fill('K01-K08');
  await page.getByRole('button', { name: 'Put cells in boxes' }).click();
  await page.getByText('8 cells put in boxes.').waitFor();
  await page.getByRole('textbox', { name: 'Boxes' }).fill('K03');
  await page.getByRole('button', { name: 'Put cells in boxes' }).click();
  await page.getByText('Boxes: K03 holds a cell of 26-01 since Thu 14 May.').waitFor();
}

async function printLabels(
  page: Page,
  house: { saveFile(press: () => Promise<void>): Promise<Buffer> },
): Promise<Buffer> {
  await page.keyboard.press('Control+l');
  await page.getByRole('heading', { name: 'Labels for mating boxes' }).waitFor();
  return house.saveFile(() => page.getByRole('button', { name: 'Save as PDF' }).click());
}

async function wordsOfPdf(bytes: Buffer): Promise<readonly string[]> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const content = await (await document.getPage(1)).getTextContent();
  return content.items.flatMap((item) => ('str' in item ? [item.str] : []));
}

async function seeChart(page: Page): Promise<void> {
  await turnTo(page, 6);
  await page
    .getByRole('row', { name: /Cut-comb edge/ })
    .getByText('9 of 12')
    .waitFor();
  await page.locator('.recharts-surface').waitFor();
  await page.getByText('Only Cut-comb edge has figures for take: ').waitFor();
}
