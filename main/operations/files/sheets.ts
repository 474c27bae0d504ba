import type { Sheet, SheetColumn } from '../../../shared/contract/exchange.ts';
import { TABLE_KEYS, type TableKey } from '../../../shared/model/table-key.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { ColumnOf } from './column-kinds.ts';
import { SHEET_COLUMNS } from './sheet-columns.ts';

/** One table of the workbook as a sheet, rows in the order in which they were typed. */
export function sheetOf(tables: Tables, key: TableKey, words: Words): Sheet {
  const rows: Readonly<Record<TableKey, () => readonly unknown[]>> = {
    hives: tables.colonies.all,
    batches: tables.batches.all,
    counts: tables.counts.all,
    boxes: tables.boxes.all,
    placements: tables.placements.all,
    looks: tables.boxLooks.all,
    queens: tables.queens.all,
    tallies: tables.tallies.all,
    'steps-done': tables.stepsDone.all,
    'steps-dropped': tables.stepDrops.all,
    losses: tables.losses.all,
    sightings: tables.observations.all,
    'queen-moves': tables.queenMoves.all,
    'queen-feedback': tables.queenFeedback.all,
    'queen-promises': tables.queenPromises.all,
    'hive-looks': tables.hiveLooks.all,
    'hive-moves': tables.colonyMoves.all,
    feedings: tables.feedings.all,
    treatments: tables.treatments.all,
    'hive-scores': tables.stockScores.all,
    'hive-tests': tables.stockTests.all,
    weather: tables.weather.all,
    wishes: tables.wishes.all,
  };
  const columns = Object.values(SHEET_COLUMNS[key]) as readonly ColumnOf<unknown>[];
  return {
    key,
    title: words.tables[key].title,
    columns: columnsOf(key, words),
    rows: rows[key]().map((row) => columns.map((column) => column.cell(row, tables))),
  };
}

export const allSheets = (tables: Tables, words: Words): readonly Sheet[] =>
  TABLE_KEYS.map((key) => sheetOf(tables, key, words));

function columnsOf(key: TableKey, words: Words): readonly SheetColumn[] {
  const meanings: Readonly<Record<string, string>> = words.tables[key].columns;
  return Object.entries<ColumnOf<never>>(SHEET_COLUMNS[key]).map(([heading, { kind, unit, choices }]) => ({
    heading,
    kind,
    unit,
    choices,
    meaning: meanings[heading] ?? '',
  }));
}

/** What every column of every table means, as a table of its own. */
export function dictionarySheet(words: Words): Sheet {
  return {
    key: 'dictionary',
    title: words.dictionary.title,
    columns: Object.entries(words.dictionary.columns).map(([heading, meaning]) => ({
      heading,
      kind: 'text',
      unit: '',
      choices: [],
      meaning,
    })),
    rows: TABLE_KEYS.flatMap((key) =>
      columnsOf(key, words).map(({ heading, kind, unit, choices, meaning }) => [
        key,
        heading,
        kind,
        unit,
        choices.join(' '),
        meaning,
      ]),
    ),
  };
}
