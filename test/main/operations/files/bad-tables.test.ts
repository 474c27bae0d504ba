// Files as they come from other hands, each through preview and import: the row and the remedy are named, and nothing is
// written before it is accepted.
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { importTable } from '../../../../main/operations/files/import-table.ts';
import { previewTable } from '../../../../main/operations/files/preview-table.ts';
import type { ImportTable } from '../../../../shared/contract/import.ts';
import type { Refusal } from '../../../../shared/contract/refusal.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { refusalSentence, rowProblemSentence } from '../../../../shared/text/sentences.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aTableChoice } from '../../../builders/handed-table.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

/** What is said of the file, row by row or as a whole, after a look and after a try at taking it in. */
async function saidOf(content: string | Uint8Array, changes: Partial<ImportTable> = {}) {
  const desk = aDesk();
  const choice = aTableChoice(content, changes);
  const seen = await previewTable(desk, choice);
  const tried = refusalOf(await importTable(desk, choice));
  expect(desk.workbook.savedAt).toBeNull();
  expect(desk.workbook.changeNumber).toBe(0);
  return {
    looked: seen.ok
      ? seen.value.problems.map((problem) => `Row ${problem.row}. ${rowProblemSentence(english, problem)}`)
      : [refusalSentence(english, seen.refusal, String)],
    tried: refusalSentence(english, tried as Refusal, String),
  };
}

const FIRST_ROW_3 = 'File: 1 row has a problem, the first is row 3. Correct the file, or leave such rows out.';

describe('letters', () => {
  const lost = (text: string) =>
    `Row 3. Name: “${text}” has letters that were lost when the file was saved. Save it anew as “CSV UTF-8”, or correct them.`;

  test.each([
    ['a lost letter', '\ufffdofie', '\ufffdofie'],
    ['UTF-8 taken for Windows-1252 and saved as UTF-8', 'caf\u00c3\u00a9', 'caf\u00c3\u00a9'],
    ['the same with a quote', 'Anna\u00e2\u20ac\u2122s', 'Anna\u00e2\u20ac\u2122s'],
  ])('%s', async (_what, name, shown) => {
    expect(await saidOf(`code,name\nH1,Zoë\nH2,${name}`)).toEqual({ looked: [lost(shown)], tried: FIRST_ROW_3 });
  });

  test('a byte that its code page does not have (81 in CP1252.TXT of unicode.org)', async () => {
    const bytes = Uint8Array.from([...'code,name\nH1,Zo\u00eb\nH2,\u0081ofie'].map((letter) => letter.charCodeAt(0)));
    expect(await saidOf(bytes)).toEqual({ looked: [lost('\u0081ofie')], tried: FIRST_ROW_3 });
  });

  test('of other languages are no trouble', async () => {
    const names = ['Žofie', 'Ångström', 'São João', 'ÃO', 'Übermut', 'Łódź', 'Ærø', '蜂'];
    const text = `code,name\n${names.map((name, index) => `H${index},${name}`).join('\n')}`;
    expect(mustOk(await previewTable(aDesk(), aTableChoice(text))).problems).toEqual([]);
  });
});

describe('rows', () => {
  test('of three line ends are counted as a spreadsheet counts them, and a number that stands twice is named', async () => {
    expect(await saidOf('code,name\r\nH1,a\rH2,b\nH1,c\r\n')).toEqual({
      looked: ['Row 4. Code: “H1” stands in row 2 already. Keep one of the two.'],
      tried: 'File: 1 row has a problem, the first is row 4. Correct the file, or leave such rows out.',
    });
  });

  test('with a quote that is never closed', async () => {
    const said = 'Row 3: a quotation mark opens a text and is never closed. Close it, or take it away.';
    expect(await saidOf('code,name\nH1,a\nH2,"b\nH3,c')).toEqual({ looked: [said], tried: said });
  });

  test('with days in three orders: asked for, then named where the chosen order does not hold', async () => {
    const text = 'batch,grafted on\n24-01,14/5/2024\n24-02,5/14/2024\n24-03,2024-05-14';
    const unclear = await saidOf(text, { kind: 'counts' });
    expect(unclear.looked).toEqual([]);
    expect(unclear.tried).toMatch(/two ways|order/i);
    const said = await saidOf(text, { kind: 'counts', dayOrder: 'day-first' });
    expect(said).toEqual({
      looked: [
        'Row 3. Larvae given on: “5/14/2024” is no day in this order. Write it as 2024-05-14, or choose another order of the days.',
      ],
      tried: FIRST_ROW_3,
    });
  });
});

describe('sizes', () => {
  test('ten million cells', async () => {
    const said = 'File: it has more than 1000000 cells. Save a table with only the rows and columns you need.';
    // 100 columns in 100,000 rows, a letter and a separator each: just the 20 MB that are looked at at all.
    const cells = new Uint8Array(20_000_000).fill(0x2c);
    for (let at = 199; at < cells.length; at += 200) cells[at] = 0x0a;
    for (let at = 0; at < cells.length; at += 2) cells[at] = 0x61;
    expect(await saidOf(cells)).toEqual({ looked: [said], tried: said });
    const larger = 'File: it is larger than 20 MB. Save only the rows you need as a new file, and choose that one.';
    expect(await saidOf(new Uint8Array(20_000_001).fill(0x61))).toEqual({ looked: [larger], tried: larger });
  });

  test('a zip within a zip', async () => {
    const said = 'File: this is no table. Choose a file that ends in .csv or .xlsx, or save the table as one of these.';
    const inner = zipSync({ 'xl/workbook.xml': strToU8('<a/>') });
    expect(await saidOf(zipSync({ 'inner.xlsx': inner }))).toEqual({ looked: [said], tried: said });
    expect(await saidOf(zipSync({ 'xl/workbook.xml': inner }))).toEqual({ looked: [said], tried: said });
  });
});
