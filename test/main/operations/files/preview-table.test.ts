import { describe, expect, test } from 'vitest';
import { previewTable } from '../../../../main/operations/files/preview-table.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import type { ImportTable } from '../../../../shared/contract/import.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { rowProblemSentence } from '../../../../shared/text/sentences.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aTableChoice } from '../../../builders/handed-table.ts';
import { aBox } from '../../../builders/mating-box.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

const look = async (desk: Desk, text: string, changes: Partial<ImportTable> = {}) =>
  mustOk(await previewTable(desk, aTableChoice(text, changes)));
const problemsOf = async (desk: Desk, text: string, changes: Partial<ImportTable> = {}) =>
  (await look(desk, text, changes)).problems.map(({ row, field, kind, other }) => [row, field, kind, other]);

describe('the columns', () => {
  test('are told by their headings, however they are written', async () => {
    const { columns, missing } = await look(aDesk(), 'Hive No.;Apiary;Mother-Line;Weather;REMARKS\n1;a;b;c;d');
    expect(columns).toEqual(['code', 'yard', 'motherLine', null, 'note']);
    expect(missing).toEqual([]);
  });

  test('of our own tables are all known again', async () => {
    const headings = 'id,number,born_in,batch,breeder,mother_line,marked_on,first_eggs_on,proved_on,place,gone_to,note';
    const { columns } = await look(aDesk(), `${headings}\n1,26-001,2026,,,,,,,,,`, { kind: 'queens' });
    expect(columns).toEqual([
      null,
      'number',
      'bornIn',
      null,
      'breeder',
      'motherLine',
      'markedOn',
      'firstEggsOn',
      'provedOn',
      'place',
      'goneTo',
      'note',
    ]);
  });

  test('that are needed are asked for before any row is looked at', async () => {
    const seen = await look(aDesk(), 'what,spotted\nH1,yard');
    expect(seen).toMatchObject({ columns: [null, null], missing: ['code'], ready: 0, problems: [], rowCount: 1 });
    expect(await look(aDesk(), 'what,spotted\nH1,yard', { columns: ['code', 'yard'] })).toMatchObject({
      ready: 1,
      newYards: ['yard'],
    });
  });
});

describe('rows with problems are named with row, field and remedy', () => {
  test('for hives', async () => {
    const desk = aDesk();
    fill(desk, ({ colonies }) => colonies.insert(aColony({ code: 'H1' })));
    const text = `code,name\nH2,ok\nH1,there\nH3,ok\n,nameless\nH3,twice\nHHHHHHHHHHHHH,long`;
    expect(await problemsOf(desk, text)).toEqual([
      [3, 'code', 'there-already', null],
      [5, 'code', 'empty', null],
      [6, 'code', 'twice', 4],
      [7, 'code', 'too-long', 12],
    ]);
    expect(await look(desk, text)).toMatchObject({ ready: 2, problemRows: 4, rowCount: 6 });
  });

  test('for boxes', async () => {
    const desk = aDesk();
    fill(desk, ({ boxes }) => boxes.insert(aBox({ code: 'K01' })));
    const text = 'box,type,walk order\nk01,,\nK 2,,\nK03,palace,\nK04,Mini box,x\nK05,half-frame,7';
    expect(await problemsOf(desk, text, { kind: 'boxes' })).toEqual([
      [2, 'code', 'there-already', null],
      [3, 'code', 'not-a-code', null],
      [4, 'boxType', 'not-a-choice', null],
      [5, 'walkOrder', 'not-a-number', 100_000],
    ]);
  });

  test('for queens', async () => {
    const text = [
      'number,born in,breeder,box,first eggs,sealed brood,place',
      '24-001,2024,H9,,,,',
      '24-002,24,,,,,',
      '24-003,2024,,K9,,,',
      '24-004,2024,,,2024-06-10,2024-06-01,',
      '24-005,2024,,,31.6.2024,,',
      '24-006,2024,,,,,heaven',
      '24-007,2024,,,1 June 2024,,sold',
    ].join('\n');
    expect(await problemsOf(aDesk(), text, { kind: 'queens' })).toEqual([
      [2, 'breeder', 'no-such-hive', null],
      [3, 'bornIn', 'not-a-number', 2200],
      [4, 'box', 'no-such-box', null],
      [5, 'provedOn', 'out-of-order', null],
      [6, 'firstEggsOn', 'not-a-day', null],
      [7, 'place', 'not-a-choice', null],
    ]);
  });

  test('for counts of past seasons', async () => {
    const text = [
      'batch,larvae given on,given,taken,removed,sealed',
      '24-01,2024-05-04,20,21,,',
      '24-02,2024-05-04,20,12,13,',
      '24-03,2024-05-04,20,12,2,11',
      '24-04,2024-05-04,twenty,,,',
      '24-05,,20,,,',
      '24-06,2024-05-04,20,12.0,2,10',
      '24-07,2024-05-04,500,,,',
    ].join('\n');
    expect(await problemsOf(aDesk(), text, { kind: 'counts' })).toEqual([
      [2, 'taken', 'more-than-before', 20],
      [3, 'removed', 'more-than-before', 12],
      [4, 'sealed', 'more-than-before', 10],
      [5, 'given', 'not-a-number', 200],
      [6, 'larvaeGivenOn', 'empty', null],
      [8, 'given', 'not-a-number', 200],
    ]);
  });

  test('in a sentence that says what stands there and what helps', async () => {
    const { problems } = await look(aDesk(), 'code\nH1\nH1');
    expect(problems.map((problem) => rowProblemSentence(english, problem))).toEqual([
      'Code: “H1” stands in row 2 already. Keep one of the two.',
    ]);
  });
});

describe('days', () => {
  const days = (...values: string[]) =>
    `batch,grafted on\n${values.map((value, index) => `24-${index},${value}`).join('\n')}`;
  const order = async (text: string, changes: Partial<ImportTable> = {}) => {
    const { dayOrder, dayOrderUnclear, problems } = await look(aDesk(), text, { kind: 'counts', ...changes });
    return [dayOrder, dayOrderUnclear, problems.map(({ row }) => row)];
  };

  test('that say themselves how they are written are read so', async () => {
    expect(await order(days('4/5/2024', '14/5/2024'))).toEqual(['day-first', false, []]);
    expect(await order(days('5.4.2024', '5.14.2024'))).toEqual(['month-first', false, []]);
    expect(await order(days('2024-05-04', '2024/5/14'))).toEqual([null, false, []]);
    expect(await order(days('45/05/04', '46/13/04'))).toEqual(['year-first', false, [3]]);
  });

  test('that can be read two ways are asked for, and nothing is ready until it is said', async () => {
    const text = days('4/5/2024', '6/7/2024');
    expect(await look(aDesk(), text, { kind: 'counts' })).toMatchObject({
      dayOrderUnclear: true,
      ready: 0,
      problems: [],
    });
    expect(await order(text, { dayOrder: 'month-first' })).toEqual(['month-first', false, []]);
  });

  test('that contradict each other are asked for too, and then named by row', async () => {
    const text = days('14/5/2024', '5/14/2024');
    expect((await order(text)).slice(0, 2)).toEqual([null, true]);
    expect(await order(text, { dayOrder: 'day-first' })).toEqual(['day-first', false, [3]]);
    expect(await order(text, { dayOrder: 'month-first' })).toEqual(['month-first', false, [2]]);
  });
});

test('the first twenty rows are shown as they stand, and looking writes nothing', async () => {
  const desk = aDesk();
  const text = `code,yard\n${Array.from({ length: 50 }, (_, index) => `H${index},Orchard`).join('\n')}`;
  const seen = await look(desk, text);
  expect(seen.rows.length).toBe(20);
  expect(seen.rows[0]).toEqual({ number: 2, cells: ['H0', 'Orchard'] });
  expect(seen).toMatchObject({ rowCount: 50, ready: 50, newYards: ['Orchard'] });
  expect(desk.workbook.tables.colonies.all()).toEqual([]);
  expect(desk.workbook.tables.yards.all()).toEqual([]);
});

test('a file that is no table is declined with the reason', async () => {
  expect(refusalOf(await previewTable(aDesk(), aTableChoice('')))).toEqual({
    kind: 'file-unreadable',
    field: 'file',
    trouble: { reason: 'empty' },
  });
});
