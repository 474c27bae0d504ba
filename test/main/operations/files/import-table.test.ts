import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { exportTables } from '../../../../main/operations/files/export-tables.ts';
import { importTable } from '../../../../main/operations/files/import-table.ts';
import { previewTable } from '../../../../main/operations/files/preview-table.ts';
import { countTally } from '../../../../main/operations/tally-keeping.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aTableChoice } from '../../../builders/handed-table.ts';
import { refusalOf } from '../../../builders/running-batch.ts';
import { aFolder, aWorkbookFile } from '../../../builders/workbook-file.ts';
import { aYard } from '../../../builders/yard.ts';

describe('taking in', () => {
  test('hives: known yards are used, new ones made once', async () => {
    const desk = aDesk();
    fill(desk, ({ yards }) => yards.insert(aYard({ id: 'orchard', name: 'Orchard' })));
    const text = 'code;name;yard;note\nH1;Anna;Orchard;first line\nH2;;Wood;\nH3;;Wood;';
    expect(mustOk(await importTable(desk, aTableChoice(text)))).toEqual({ added: 3, leftOut: 0, copied: false });
    const { colonies, yards } = desk.workbook.tables;
    expect(yards.all().map(({ name }) => name)).toEqual(['Orchard', 'Wood']);
    const wood = yards.where({ name: 'Wood' })[0]?.id;
    expect(colonies.all().map(({ code, name, yardId, endedOn }) => [code, name, yardId, endedOn])).toEqual([
      ['H1', 'Anna', 'orchard', null],
      ['H2', null, wood, null],
      ['H3', null, wood, null],
    ]);
  });

  test('boxes: in the order of the rows after those that are there, of the make-up said for all', async () => {
    const desk = aDesk();
    mustOk(await importTable(desk, aTableChoice('box\nk07\nK08', { kind: 'boxes', boxType: 'half-frame' })));
    mustOk(await importTable(desk, aTableChoice('box,type\nK09,mini box', { kind: 'boxes', boxType: 'half-frame' })));
    const boxes = desk.workbook.tables.boxes.all();
    expect(boxes.map(({ code, boxType }) => [code, boxType])).toEqual([
      ['K07', 'half-frame'],
      ['K08', 'half-frame'],
      ['K09', 'mini'],
    ]);
    const order = boxes.map(({ walkOrder }) => walkOrder);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(new Set(order).size).toBe(3);
  });

  test('queens: days of the order that was said, hives by their code', async () => {
    const desk = aDesk();
    fill(desk, ({ colonies }) => colonies.insert(aColony({ id: 'h3', code: 'H03' })));
    const text =
      'queen,born in,breeder,first eggs,in hive,sold to\n24-001,2024,H03,6/5/2024,,Maria\n24-002,2024,,,H03,';
    const choice = { kind: 'queens', dayOrder: 'month-first', queenPlace: 'dead' } as const;
    mustOk(await importTable(desk, aTableChoice(text, choice)));
    expect(desk.workbook.tables.queens.all()).toMatchObject([
      { number: '24-001', breederId: 'h3', firstEggsOn: '2024-06-05', place: 'given', goneTo: 'Maria', provedOn: null },
      { number: '24-002', breederId: null, firstEggsOn: null, place: 'in-hive', colonyId: 'h3' },
    ]);
  });

  test('counts: closed batches of their season, their sums kept, not counted stays unknown', async () => {
    const desk = aDesk();
    const text =
      'batch,grafted on,method,larvae,accepted,capped\n24-01,14.5.2024,,20,15,12\n24-02,1.6.2023,Comb strip,10,0,';
    mustOk(await importTable(desk, aTableChoice(text, { kind: 'counts' })));
    const { batches, tallies, counts } = desk.workbook.tables;
    expect(batches.all()).toMatchObject([
      { code: '24-01', season: 2024, method: 'larva-grafting', anchorOn: '2024-05-14', closedOn: '2024-05-14' },
      { code: '24-02', season: 2023, method: 'comb-strip', anchorOn: '2023-06-01' },
    ]);
    expect(tallies.all()).toMatchObject([
      { given: 20, taken: 15, sealed: 12, placed: 0 },
      { given: 10, taken: 0, sealed: null, placed: 0 },
    ]);
    for (const tally of tallies.all()) expect(tally).toEqual(countTally(desk.workbook.tables, tally.batchId));
    expect(counts.all().length).toBe(5);
  });

  test('weather: decimals with comma or point, a day noted already stays as it was', async () => {
    const desk = aDesk();
    const noted = { maxCelsius: 12, windKmh: null, rain: null, flyingHours: null };
    fill(desk, ({ weather }) => weather.insert({ id: 'w', day: '2026-05-14', ...noted }));
    const text =
      'date;tmax;wind;rain;hours\n2026-05-14;20;5;no;3\n2026-05-15;21,5;12;yes;0.5\n2026-05-16;-3;;;\n2026-05-16;9;;;\n2026-05-17;99;;;';
    const refused = refusalOf(await importTable(desk, aTableChoice(text, { kind: 'weather' })));
    expect(refused).toMatchObject({ kind: 'rows-with-problems', rows: 3, first: 2 });
    mustOk(await importTable(desk, aTableChoice(text, { kind: 'weather', leaveOut: true })));
    expect(desk.workbook.tables.weather.all().map(({ id: _, ...weather }) => weather)).toEqual([
      { day: '2026-05-14', ...noted },
      { day: '2026-05-15', maxCelsius: 21.5, windKmh: 12, rain: true, flyingHours: 0.5 },
      { day: '2026-05-16', maxCelsius: -3, windKmh: null, rain: null, flyingHours: null },
    ]);
  });

  test('our own table of weather is taken in again as it was', async () => {
    const from = aDesk();
    const days = [
      { day: '2026-05-14', maxCelsius: 21.5, windKmh: 12, rain: false, flyingHours: 3 },
      { day: '2026-05-15', maxCelsius: null, windKmh: null, rain: true, flyingHours: 0 },
    ];
    fill(from, ({ weather }) => {
      for (const day of days) weather.insert({ id: day.day, ...day });
    });
    const made = await exportTables(from, { format: 'csv', table: 'weather', separator: 'semicolon', mark: true });
    const to = aDesk();
    const file = Buffer.from(mustOk(made).base64, 'base64');
    mustOk(await importTable(to, aTableChoice(file, { kind: 'weather' })));
    expect(to.workbook.tables.weather.all()).toEqual(from.workbook.tables.weather.all());
  });

  test('our own table of hives brings back the very texts, formulas and all', async () => {
    const from = aDesk();
    const odd = aColony({ code: 'H1', name: '=1+1', note: '\'=x\n"quoted"; Ž', place: '@home', motherLine: null });
    fill(from, ({ colonies }) => colonies.insert({ ...odd, yardId: null }));
    const made = await exportTables(from, { format: 'csv', table: 'hives', separator: 'semicolon', mark: true });
    const to = aDesk();
    mustOk(await importTable(to, aTableChoice(Buffer.from(mustOk(made).base64, 'base64'))));
    const { name, note, place } = to.workbook.tables.colonies.all()[0] ?? aColony();
    expect({ name, note, place }).toEqual({ name: odd.name, note: odd.note, place: odd.place });
  });
});

test('a safety copy is made before the first row is written', async () => {
  const folder = aFolder();
  const desk = { ...aDesk(), workbook: aWorkbookFile(folder) };
  expect(mustOk(await importTable(desk, aTableChoice('code\nH1')))).toMatchObject({ copied: true });
  const copy = readdirSync(join(folder, 'safety-copies')).find((name) => name.endsWith('.ripecell'));
  expect(copy).toContain('before-import');
  const opened = new Database(join(folder, 'safety-copies', copy ?? ''), { readonly: true });
  expect(opened.prepare('SELECT count(*) FROM colony').pluck().get()).toBe(0);
  opened.close();
});

describe('nothing is written', () => {
  const bad = 'code\nH1\nH1\nH2';

  test('while a row has a problem, unless such rows are to be left out', async () => {
    const desk = aDesk();
    expect(refusalOf(await importTable(desk, aTableChoice(bad)))).toEqual({
      kind: 'rows-with-problems',
      field: 'file',
      rows: 1,
      first: 3,
    });
    expect(desk.workbook.tables.colonies.all()).toEqual([]);
    expect(mustOk(await importTable(desk, aTableChoice(bad, { leaveOut: true })))).toEqual({
      added: 2,
      leftOut: 1,
      copied: false,
    });
    expect(desk.workbook.tables.colonies.all().map(({ code }) => code)).toEqual(['H1', 'H2']);
  });

  test.each([
    ['a column is not matched', 'what\nH1', {}, 'fields-not-matched'],
    ['days can be read two ways', 'batch,grafted on\n24-01,4/5/2024', { kind: 'counts' }, 'day-order-needed'],
    ['no row is left', 'code\n,', {}, 'file-unreadable'],
    ['every row is left out', 'code,name\n,x', { leaveOut: true }, 'nothing-to-take-in'],
    ['the file is no table', '\0\0', {}, 'file-unreadable'],
  ] as const)('when %s', async (_when, text, changes, kind) => {
    const desk = aDesk();
    expect(refusalOf(await importTable(desk, aTableChoice(text, changes)))).toMatchObject({ kind });
    expect(desk.workbook.savedAt).toBeNull();
  });
});

test('how the columns were matched is remembered for the next table with the same headings, and for no other', async () => {
  const desk = aDesk();
  const columns = ['note', 'code'] as const;
  mustOk(await importTable(desk, aTableChoice('code,what\nfirst,H1', { columns: [...columns] })));
  const seen = async (text: string) => mustOk(await previewTable(desk, aTableChoice(text))).columns;
  expect(await seen('Code,WHAT\nsecond,H2')).toEqual(columns);
  expect(await seen('code,that\nH2,x')).toEqual(['code', null]);
  expect(await seen('code,what,more\nH2,x,y')).toEqual(['code', null, null]);
  mustOk(desk.workbook.undo());
  expect(await seen('code,what\nH2,x')).toEqual(['code', null]);
});

test('one undo takes back all of it, also the new yards', async () => {
  const desk = aDesk();
  mustOk(await importTable(desk, aTableChoice('code,yard\nH1,Wood\nH2,Wood')));
  mustOk(desk.workbook.undo());
  expect(desk.workbook.tables.colonies.all()).toEqual([]);
  expect(desk.workbook.tables.yards.all()).toEqual([]);
});
