import { TABLE_KEYS, type TableKey } from '../../contract/exchange.ts';

const ID = 'Name of the row for life; the same in every file.';

/** What each table and column holds. The dictionary beside the tables is made from these. */
export const tableWords = {
  hives: {
    title: 'Hives',
    columns: {
      id: ID,
      code: 'Short name of the hive.',
      name: 'Its name, if it has one.',
      yard: 'Yard in which it stands.',
      place: 'Where in the yard.',
      mother_line: 'Line its queen comes from.',
      roles: 'What it was used for, by season.',
      note: 'Note.',
      ended_on: 'Day it ceased to be a hive of its own; empty while it lives.',
    },
  },
  batches: {
    title: 'Batches',
    columns: {
      id: ID,
      code: 'Season and number in it.',
      season: 'Season.',
      method: 'Way of getting the cells.',
      own_method: 'Your own copy of the method, if one was used.',
      comb: 'Comb given to the breeder, for cut-comb batches.',
      builder_type: 'How the builder was arranged.',
      breeder: 'Hive whose larvae were raised.',
      builder: 'Hive that raised the cells.',
      anchor_step: 'Step whose day is known.',
      anchor_on: 'That day; all others are reckoned from it.',
      larvae_given_on: 'Day the larvae were given, reckoned.',
      larva_age_from_h: 'Age of the youngest larva when given; empty = the usual span of the method.',
      larva_age_to_h: 'Age of the oldest larva when given.',
      sealed_celsius: 'Warmth around the sealed cells; empty = in a hive.',
      cells_planned: 'Cells planned.',
      practice: 'Whether it was for practice or a class.',
      note: 'Note.',
      lesson: 'What to remember next year.',
      closed_on: 'Day it was closed; empty while it is open.',
    },
  },
  counts: {
    title: 'Counts',
    columns: {
      id: ID,
      batch: 'Batch.',
      bar: 'Number of the bar in the batch.',
      stage: 'Stage that was counted. Removed = taken cells taken away on purpose before sealing.',
      cells: 'Cells; 0 = counted, and there were none. No row = not counted.',
      counted_on: 'Day of counting.',
    },
  },
  boxes: {
    title: 'Mating boxes',
    columns: {
      id: ID,
      code: 'Short name of the box.',
      yard: 'Yard in which it stands.',
      row: 'Row or landmark.',
      walk_order: 'Place in walking order.',
      box_type: 'Make-up of the box.',
      note: 'Note.',
      retired_on: 'Day it was taken out of use; empty while it is used.',
    },
  },
  placements: {
    title: 'Cells in boxes',
    columns: {
      id: ID,
      box: 'Box the cell was put in.',
      batch: 'Batch the cell came from.',
      bar: 'Number of its bar, if known.',
      placed_on: 'Day it was put in.',
      ended_on: 'Day the box became free; empty while it holds the cell or queen.',
      end_reason: 'How it ended.',
    },
  },
  looks: {
    title: 'Looks into boxes',
    columns: {
      id: ID,
      box: 'Box that was opened.',
      batch: 'Batch of the cell or queen looked for; empty when the box held none.',
      placement_id: 'Row of the table placements that was looked for.',
      looked_on: 'Day of the look.',
      result: 'What was seen. not-looked is neither success nor failure.',
      strength: 'Strength, from hardly any bees to full.',
      food: 'Food, from hardly any to plenty.',
      note: 'Note.',
    },
  },
  queens: {
    title: 'Queens',
    columns: {
      id: ID,
      number: 'Year of birth and number in it.',
      born_in: 'Year of birth; the year colour follows from it.',
      batch: 'Batch she came from.',
      born_in_box: 'Box she was mated in.',
      breeder: 'Hive of her mother.',
      mother_line: 'Line of her mother.',
      marked_on: 'Day she was marked.',
      first_eggs_on: 'Day her first eggs were seen.',
      proved_on: 'Day her sealed worker brood was seen.',
      place: 'Where she is.',
      box: 'Box she is in.',
      hive: 'Hive she is in.',
      gone_to: 'To whom she went.',
      note: 'Note.',
    },
  },
  tallies: {
    title: 'What came of each batch',
    columns: {
      batch: 'Batch.',
      given: 'Cells given to the builder; empty = not known.',
      taken: 'Cells the bees took.',
      entered_sealing: 'Taken cells less those removed on purpose.',
      sealed: 'Cells sealed.',
      placed: 'Cells put in boxes.',
      emergence_known: 'Placed cells of which it is known whether a queen came out.',
      emerged: 'Of those, queens that came out.',
      mating_known: 'Emerged queens of which it is known whether they came to lay worker brood.',
      proved: 'Of those, queens whose sealed worker brood was seen.',
      laying: 'Queens seen laying so far, proved or not.',
    },
  },
  weather: {
    title: 'Flight weather',
    columns: {
      day: 'Day.',
      max_celsius: 'Highest temperature of the day.',
      wind_kmh: 'Wind.',
      rain: 'Whether it rained at flying time, 11 to 16 h.',
      flying_hours: 'Hours between 11 and 16 h in which bees flew well.',
    },
  },
} as const satisfies Record<TableKey, { readonly title: string; readonly columns: Readonly<Record<string, string>> }>;

export const dictionaryWords = {
  title: 'Read me',
  columns: {
    table: 'Table the column belongs to.',
    column: 'Heading of the column.',
    kind: 'Kind of its values; days are written 2026-05-14.',
    unit: 'Unit.',
    choices: 'The words it may hold, if it holds one of a list.',
    meaning: 'What it says. An empty cell means: not known.',
  },
} as const;

/** The names of the tables, for lists on the page. */
export const tableTitles = Object.fromEntries(TABLE_KEYS.map((key) => [key, tableWords[key].title])) as Readonly<
  Record<TableKey, string>
>;

/** Words of the section on the page. */
export const tablesOut = {
  title: 'Tables for spreadsheets and other programs',
  explain: 'A copy of what is in the workbook. Nothing in the workbook changes.',
  format: 'As',
  formats: {
    xlsx: 'Spreadsheet workbook (XLSX), one sheet a table',
    csv: 'Text tables (CSV)',
    json: 'Everything (JSON), to be taken in again',
    schema: 'Description of that JSON file (JSON Schema)',
  },
  table: 'Table',
  all: 'All tables, in a zip',
  dictionary: 'What the columns mean',
  separator: 'Between the columns',
  separators: { comma: 'comma', semicolon: 'semicolon' },
  separatorHint: 'Spreadsheets set to a language with a decimal comma expect a semicolon.',
  mark: 'For a spreadsheet (letters such as ø and ž are read rightly)',
  save: 'Save the file',
  rows: (rows: number) => (rows === 1 ? '1 row.' : `${rows} rows.`),
  fileName: (what: string, day: string) => `ripecell-${what}-${day}`,
  saved: (path: string) => `Saved as ${path}.`,
  notSaved: 'The file could not be written there. Choose another folder.',
  downloaded: 'The file is in your downloads.',
} as const;
