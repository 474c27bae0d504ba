import type { FileTrouble, ImportField, ImportKind, RowProblem, WholeProblem } from '../../contract/import.ts';

const rows = (n: number) => (n === 1 ? '1 row' : `${n} rows`);

export const IMPORT_FIELD_WORDS: Readonly<Record<ImportField, string>> = {
  code: 'Code',
  name: 'Name',
  yard: 'Yard',
  place: 'Place',
  motherLine: 'Mother line',
  note: 'Note',
  row: 'Row or landmark',
  walkOrder: 'Walking order',
  boxType: 'Make-up of the box',
  number: 'Number',
  bornIn: 'Born in',
  breeder: 'Breeder',
  markedOn: 'Marked on',
  firstEggsOn: 'First eggs on',
  provedOn: 'Sealed brood on',
  box: 'In box',
  hive: 'In hive',
  goneTo: 'Gone to',
  larvaeGivenOn: 'Larvae given on',
  method: 'Method',
  builder: 'Builder',
  given: 'Given',
  taken: 'Taken',
  removed: 'Removed',
  sealed: 'Sealed',
  countedOn: 'Counted on',
  day: 'Day',
  maxCelsius: 'Highest, °C',
  windKmh: 'Wind, km/h',
  rain: 'Rain at flying time',
  flyingHours: 'Good flying hours',
};

/** Headings people use, in letters and digits only; the field's own name and the one in our own tables are known anyway. */
export const HEADING_GUESSES: Readonly<Partial<Record<ImportField, readonly string[]>>> = {
  code: ['hive', 'hivecode', 'hiveno', 'hivenumber', 'colony', 'colonycode', 'box', 'boxcode', 'boxno', 'batch', 'id'],
  name: ['hivename', 'colonyname', 'title'],
  yard: ['apiary', 'location', 'site', 'stand'],
  place: ['position', 'spot', 'where', 'status', 'whereis'],
  motherLine: ['line', 'strain', 'race', 'mother', 'queenline'],
  note: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  row: ['landmark'],
  walkOrder: ['order', 'sequence', 'walk'],
  boxType: ['type', 'kind', 'size'],
  number: ['queen', 'queennumber', 'queenno', 'no', 'nr', 'tag'],
  bornIn: ['born', 'birthyear', 'year', 'yearofbirth', 'hatched'],
  breeder: ['motherhive', 'mothercolony', 'breederhive', 'from'],
  markedOn: ['marked', 'markedday', 'datemarked'],
  firstEggsOn: ['firsteggs', 'eggs', 'layingsince', 'startedlaying'],
  provedOn: ['proved', 'sealedbrood', 'mated', 'matedon'],
  box: ['matingbox', 'inbox'],
  hive: ['inhive', 'colony'],
  goneTo: ['soldto', 'givento', 'buyer', 'customer'],
  larvaeGivenOn: ['larvaegiven', 'grafted', 'graftedon', 'graftdate', 'date', 'day', 'start', 'started', 'anchoron'],
  method: ['way'],
  builder: ['starter', 'finisher', 'cellbuilder', 'nurse'],
  given: ['larvae', 'grafts', 'cellsgiven', 'offered'],
  taken: ['accepted', 'take', 'cellstaken', 'drawn'],
  removed: ['thinned', 'takenaway'],
  sealed: ['capped', 'cellssealed', 'ripe'],
  countedOn: ['counted', 'countday'],
  day: ['date', 'on'],
  maxCelsius: ['highest', 'max', 'maxtemp', 'maxtemperature', 'tmax', 'temperature', 'high', 'maxc'],
  windKmh: ['wind', 'windspeed', 'maxwind'],
  rain: ['rained'],
  flyingHours: ['hours', 'flying', 'goodhours', 'flyinghoursh'],
};

export const FILE_TROUBLE: Readonly<Record<FileTrouble['reason'], (trouble: FileTrouble) => string>> = {
  'too-large': ({ limit = 0 }) =>
    `File: it is larger than ${limit / 1_000_000} MB. Save only the rows you need as a new file, and choose that one.`,
  'zip-too-large': () =>
    'File: unpacked it would be far too large. Open it in the program it comes from, and save it anew as CSV.',
  'zip-broken': () => 'File: it is damaged. Save it anew in the program it comes from, and choose that one.',
  'not-a-table': () =>
    'File: this is no table. Choose a file that ends in .csv or .xlsx, or save the table as one of these.',
  empty: () => 'File: there are no rows under the headings. Choose a file whose first row holds the headings.',
  'too-many-rows': ({ limit = 0 }) => `File: it has more than ${limit} rows. Part it into smaller files.`,
  'too-many-columns': ({ limit = 0 }) =>
    `File: it has more than ${limit} columns. Save a table with only the columns you need.`,
  'too-many-cells': ({ limit = 0 }) =>
    `File: it has more than ${limit} cells. Save a table with only the rows and columns you need.`,
  'cell-too-long': ({ row = 0, limit = 0 }) => `Row ${row}: a cell holds more than ${limit} letters. Shorten it.`,
  'quote-left-open': ({ row = 0 }) =>
    `Row ${row}: a quotation mark opens a text and is never closed. Close it, or take it away.`,
  'not-json': () => 'File: it cannot be read as JSON. Choose the file that was saved here as “Everything”.',
  'too-deep': () => 'File: this is no file that was saved here as “Everything”. Choose that one.',
  'not-our-file': () => 'File: this is no file that was saved here as “Everything”. Choose that one.',
  contradicts: () =>
    'File: its rows contradict each other or the workbook, so nothing was taken in. Take it into a new workbook.',
  'newer-form': () => 'File: it was made by a newer version of the program. Get the newer program, then take it in.',
};

export const PROBLEM: Readonly<Record<RowProblem['kind'], (problem: RowProblem, field: string) => string>> = {
  empty: (_, field) => `${field} is empty. Fill it in.`,
  'not-a-day': ({ text }, field) =>
    `${field}: “${text}” is no day in this order. Write it as 2024-05-14, or choose another order of the days.`,
  'not-a-number': ({ text, other }, field) =>
    `${field}: “${text}” is no whole number${other === null ? '' : ` up to ${other}`}. Correct it.`,
  'not-a-figure': ({ text, other }, field) =>
    `${field}: “${text}” is no number, or not one a day can bring${other === null ? '' : ` (at most ${other})`}. Correct it, or leave it empty.`,
  'not-a-choice': ({ text }, field) =>
    `${field}: “${text}” is none of the words for this. Correct it, or leave it empty.`,
  'not-a-code': ({ text }, field) =>
    `${field}: “${text}” is no code. Use up to 12 letters and digits without a space, such as K01.`,
  'too-long': ({ other }, field) => `${field} is longer than ${other} letters. Shorten it.`,
  'letters-lost': ({ text }, field) =>
    `${field}: “${text}” has letters that were lost when the file was saved. Save it anew as “CSV UTF-8”, or correct them.`,
  twice: ({ text, other }, field) => `${field}: “${text}” stands in row ${other} already. Keep one of the two.`,
  'there-already': ({ text }, field) =>
    `${field}: “${text}” is in the workbook already. Leave the row out, or change it.`,
  'no-such-hive': ({ text }, field) =>
    `${field}: there is no hive “${text}”. Take in the hives first, or leave it empty.`,
  'no-such-box': ({ text }, field) =>
    `${field}: there is no box “${text}”. Take in the boxes first, or leave it empty.`,
  'more-than-before': ({ text, other }, field) =>
    `${field}: ${text} is more than the ${other} there were before. Correct one of the two.`,
  'out-of-order': ({ text }, field) => `${field}: ${text} lies before the first eggs. Correct one of the two.`,
};

export const WHOLE_PROBLEM: Readonly<Record<WholeProblem['kind'], (problem: WholeProblem) => string>> = {
  'not-valid': ({ field, text }) => `${field}: “${text}” does not fit. Correct it in the file.`,
  'points-nowhere': ({ field, text }) =>
    `${field}: there is no row “${text}” it could point to. Add that row to the file.`,
  taken: ({ field, text }) =>
    `${field}: “${text}” belongs to another row of this workbook. Take the file into a new workbook instead.`,
  twice: ({ field, text }) => `${field}: “${text}” stands twice in the file. Keep one of the two.`,
};

export const tablesIn = {
  title: 'Take in a table',
  explain:
    'From a CSV or XLSX file whose first row holds the headings. Nothing is written before you have seen what will come of each row.',
  kind: 'The rows are',
  kinds: {
    hives: 'hives',
    boxes: 'mating boxes',
    queens: 'queens',
    counts: 'batches of past seasons, with their counts',
    weather: 'flight weather, day by day',
  } satisfies Record<ImportKind, string>,
  file: 'File',
  sheet: 'Sheet',
  columns: 'Which column is what',
  leave: 'leave out',
  dayOrder: 'Days are written',
  dayOrders: {
    'day-first': 'day, month, year: 14/5/2024',
    'month-first': 'month, day, year: 5/14/2024',
    'year-first': 'year, month, day: 2024-05-14',
  },
  notSaid: 'choose',
  unclear: 'Days in this file can be read two ways. Say how they are written.',
  method: 'Method, where no column says it',
  boxType: 'Make-up, where no column says it',
  queenPlace: 'Where they are, where no column says it',
  missing: (fields: readonly string[]) =>
    `Say which column is: ${fields.join(', ')}. Without it no row can be taken in.`,
  ready: (ready: number, all: number) => `${ready} of ${rows(all)} can be taken in.`,
  newYards: (yards: readonly string[]) => `New yards: ${yards.join(', ')}.`,
  problemRow: 'Row',
  tableRow: (table: string, row: number) => `${table}, row ${row}.`,
  problem: 'What is wrong, and what helps',
  moreProblems: (n: number) => `${rows(n)} in all have problems.`,
  leaveOut: 'Leave out the rows with problems',
  preview: 'The first rows of the file',
  take: (n: number) => `Take in ${rows(n)}`,
  taken: (added: number, leftOut: number, copied: boolean) =>
    `${rows(added)} taken in${leftOut === 0 ? '' : `, ${leftOut} left out`}.${copied ? ' A safety copy was made before.' : ''}`,
  countsHint: 'Counts without a day of their own get the day the larvae were given.',
  whole: {
    title: 'Take in a file of everything',
    explain:
      'A JSON file that was saved here as “Everything”. Rows that are here already are written over, others are added, none are removed.',
    file: 'JSON file',
    what: (name: string, day: string) => `“${name}”, saved ${day}.`,
    counts: (added: number, changed: number, same: number) =>
      `${added} new, ${changed} changed, ${same} the same as here.`,
    take: 'Take it in',
    taken: (added: number, changed: number) => `${rows(added)} added, ${changed} written over.`,
    problems: 'It cannot be taken in as it is',
  },
} as const;
