import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import readXlsxFile from 'read-excel-file/universal';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { exportTables } from '../../../../main/operations/files/export-tables.ts';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import type { ExportTables } from '../../../../shared/contract/exchange.ts';
import { WholeWorkbook } from '../../../../shared/contract/whole-workbook.ts';
import { TABLE_KEYS } from '../../../../shared/model/table-key.ts';
import { tableWords } from '../../../../shared/text/english/tables-out.ts';
import { anyWorkbook } from '../../../builders/any-workbook.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

const CHOICE: ExportTables = { format: 'csv', table: 'hives', separator: 'comma', mark: false };

async function made(desk: Desk, changes: Partial<ExportTables> = {}) {
  const file = mustOk(await exportTables(desk, { ...CHOICE, ...changes }));
  return { ...file, bytes: Buffer.from(file.base64, 'base64') };
}
const read = (text: string | Buffer, delimiter = ','): Record<string, string>[] =>
  parse(text, { columns: true, delimiter, bom: true });

/** The header row and 64 lines of a hive whose name begins like a formula. */
function aDeskWithOddNames(): Desk {
  const desk = aDeskWithBoxes();
  mustOk(
    saveHive(desk, {
      id: 'odd',
      code: 'H99',
      name: '=cmd; "Žofie", 2',
      yardId: null,
      place: null,
      motherLine: null,
      note: 'first line\nsecond line',
      endedOn: null,
    }),
  );
  return desk;
}

describe('as CSV', () => {
  test('hives come with their words, guarded, and empty where nothing is known', async () => {
    const { bytes, name, rows } = await made(aDeskWithOddNames());
    const hives = read(bytes);
    expect(rows).toBe(hives.length);
    expect(hives.find(({ code }) => code === 'H99')).toMatchObject({
      name: `'=cmd; "Žofie", 2`,
      note: 'first line\nsecond line',
      yard: '',
      ended_on: '',
    });
    expect(hives.find(({ code }) => code === 'H03')).toMatchObject({ roles: '2026 breeder' });
    expect(name).toBe('ripecell-hives-2026-05-14.csv');
  });

  test('by local choice with semicolons and the mark of UTF-8', async () => {
    const { bytes } = await made(aDeskWithOddNames(), { separator: 'semicolon', mark: true });
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(read(bytes, ';')).toEqual(read((await made(aDeskWithOddNames())).bytes));
    expect((await made(aDeskWithOddNames())).bytes[0]).toBe('i'.charCodeAt(0));
  });

  test('counts, cells in boxes and sums of the batch agree with what was typed', async () => {
    const desk = aDeskWithBoxes();
    const counts = read((await made(desk, { table: 'counts' })).bytes);
    expect(counts.map(({ batch, bar, stage, cells }) => [batch, bar, stage, cells])).toEqual([
      ['26-01', '1', 'given', '12'],
      ['26-01', '1', 'taken', '9'],
      ['26-01', '1', 'sealed', '8'],
    ]);
    expect(read((await made(desk, { table: 'placements' })).bytes).map(({ box }) => box)).toEqual([
      'K01',
      'K02',
      'K03',
      'K04',
      'K05',
      'K06',
    ]);
    expect(read((await made(desk, { table: 'tallies' })).bytes)).toMatchObject([
      { batch: '26-01', given: '12', taken: '9', sealed: '8', placed: '6', entered_sealing: '9', emerged: '0' },
    ]);
    const [batch] = read((await made(desk, { table: 'batches' })).bytes);
    expect(batch).toMatchObject({ code: '26-01', larvae_given_on: '2026-05-04', breeder: 'H03', closed_on: '' });
  });

  test('the zip holds every table and a dictionary that explains every column', async () => {
    const { bytes, name } = await made(aDeskWithBoxes(), { table: 'all' });
    expect(name).toMatch(/\.zip$/);
    const files = unzipSync(bytes);
    expect(Object.keys(files).toSorted()).toEqual([...TABLE_KEYS, 'dictionary'].map((key) => `${key}.csv`).toSorted());
    const dictionary = read(Buffer.from(files['dictionary.csv'] ?? []));
    const explained = dictionary.map(({ table, column }) => `${table}.${column}`);
    const headings = TABLE_KEYS.flatMap((key) => {
      const [first = []] = parse(Buffer.from(files[`${key}.csv`] ?? []), { to_line: 1 }) as string[][];
      return first.map((heading) => `${key}.${heading}`);
    });
    expect(explained).toEqual(headings);
    expect(dictionary.filter(({ meaning }) => !/^[A-Z].*\.$/.test(meaning ?? ''))).toEqual([]);
    expect(dictionary.find(({ column }) => column === 'stage')?.choices).toBe('given taken removed sealed');
  });

  test('every row of every table of any workbook is there, whatever is in it', async () => {
    await fc.assert(
      fc.asyncProperty(anyWorkbook, async (fillIt) => {
        const desk = aDesk();
        fill(desk, fillIt);
        const files = unzipSync((await made(desk, { table: 'all' })).bytes);
        const rowsOf = (key: string) => read(Buffer.from(files[`${key}.csv`] ?? [])).length;
        const { tables } = desk.workbook;
        const all = [tables.colonies, tables.queens, tables.queenMoves, tables.stockTests, tables.weather];
        const keys = ['hives', 'queens', 'queen-moves', 'hive-tests', 'weather'];
        expect(keys.map(rowsOf)).toEqual(all.map((table) => table.all().length));
      }),
      { numRuns: 10 },
    );
  });

  test('an empty workbook gives headings without rows', async () => {
    const { bytes, rows } = await made(aDesk(), { table: 'looks' });
    expect(rows).toBe(0);
    expect(bytes.toString()).toBe('id,box,batch,placement_id,looked_on,result,strength,food,note\r\n');
  });
});

describe('as a spreadsheet workbook', () => {
  test('another library reads the same rows, real days and numbers, and no formula', async () => {
    const desk = aDeskWithOddNames();
    const { bytes } = await made(desk, { format: 'xlsx', table: 'all' });
    const sheets = await readXlsxFile(Uint8Array.from(bytes).buffer);
    const titles = TABLE_KEYS.map((key) => tableWords[key].title);
    expect(sheets.map(({ sheet }) => sheet)).toEqual([...titles, 'Read me']);
    // A limit of the format: 31 signs, none of them []:*?/\\.
    for (const title of titles) expect(title).toMatch(/^[^[\]:*?/\\]{1,31}$/);
    const rowsOf = (title: string) => sheets.find(({ sheet }) => sheet === title)?.data ?? [];
    const [headings = [], ...hives] = rowsOf('Hives');
    const odd = hives.find((row) => row[headings.indexOf('code')] === 'H99');
    expect(odd?.[headings.indexOf('name')]).toBe('=cmd; "Žofie", 2');
    const [countHeadings = [], given] = rowsOf('Counts');
    expect(given?.[countHeadings.indexOf('cells')]).toBe(12);
    const day = given?.[countHeadings.indexOf('counted_on')] as unknown as Date;
    expect(day.toISOString()).toBe('2026-05-09T00:00:00.000Z');
    const xml = Object.entries(unzipSync(bytes)).filter(([name]) => /worksheets\/[^/]+\.xml$/.test(name));
    expect(xml.length).toBe(TABLE_KEYS.length + 1);
    expect(xml.some(([, sheet]) => Buffer.from(sheet).includes('<f>'))).toBe(false);
  });
});

describe('as JSON', () => {
  test('holds every row, and says what it is', async () => {
    const desk = aDeskWithBoxes();
    fill(desk, ({ settings }) => settings.put('weekStart', 'sunday'));
    const { bytes, rows } = await made(desk, { format: 'json' });
    const whole = WholeWorkbook.parse(JSON.parse(bytes.toString()));
    expect(whole).toMatchObject({ format: 'ripecell-workbook', version: 1, exportedOn: '2026-05-14' });
    expect(whole.tables.placements).toEqual(desk.workbook.tables.placements.all());
    expect(whole.tables.tallies).toEqual(desk.workbook.tables.tallies.all());
    expect(whole.settings).toMatchObject({ weekStart: 'sunday' });
    expect(Object.keys(whole.settings).filter((key) => /^(workbook|lastChange|builtBy|heldAt)/.test(key))).toEqual([]);
    expect(rows).toBe(Object.values(whole.tables).reduce((sum, table) => sum + table.length, 0));
  });

  test('is described by a JSON Schema that lets the file through, and nothing with a wrong field', async () => {
    const { bytes } = await made(aDesk(), { format: 'schema' });
    const schema = JSON.parse(bytes.toString());
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    const described = z.fromJSONSchema(schema);
    const whole = JSON.parse((await made(aDeskWithBoxes(), { format: 'json' })).bytes.toString());
    expect(described.safeParse(whole).success).toBe(true);
    whole.tables.counts[0].cells = 'twelve';
    expect(described.safeParse(whole).success).toBe(false);
    whole.tables.counts[0].cells = 12;
    delete whole.tables.batches[0].code;
    expect(described.safeParse(whole).success).toBe(false);
  });
});
