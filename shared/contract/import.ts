import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { BOX_TYPES, METHODS } from '../model/method.ts';
import { QUEEN_PLACES } from '../model/queen.ts';

/** What can be taken in from a table somebody else made. */
export const IMPORT_KINDS = ['hives', 'boxes', 'queens', 'counts', 'weather'] as const;
export type ImportKind = (typeof IMPORT_KINDS)[number];

/** The fields of a row of each kind; those that must be there stand in NEEDED_FIELDS. */
export const IMPORT_FIELDS = {
  hives: ['code', 'name', 'yard', 'place', 'motherLine', 'note'],
  boxes: ['code', 'yard', 'row', 'walkOrder', 'boxType', 'note'],
  queens: [
    'number',
    'bornIn',
    'breeder',
    'motherLine',
    'markedOn',
    'firstEggsOn',
    'provedOn',
    'place',
    'box',
    'hive',
    'goneTo',
    'note',
  ],
  counts: [
    'code',
    'larvaeGivenOn',
    'method',
    'breeder',
    'builder',
    'given',
    'taken',
    'removed',
    'sealed',
    'countedOn',
    'note',
  ],
  weather: ['day', 'maxCelsius', 'windKmh', 'rain', 'flyingHours'],
} as const satisfies Readonly<Record<ImportKind, readonly string[]>>;
export type ImportField = (typeof IMPORT_FIELDS)[ImportKind][number];

export const NEEDED_FIELDS: Readonly<Record<ImportKind, readonly ImportField[]>> = {
  hives: ['code'],
  boxes: ['code'],
  queens: ['number', 'bornIn'],
  counts: ['code', 'larvaeGivenOn'],
  weather: ['day'],
};

const ALL_FIELDS = [...new Set<ImportField>(Object.values(IMPORT_FIELDS).flat())];
export const DAY_ORDERS = ['day-first', 'month-first', 'year-first'] as const;
export type DayOrder = (typeof DAY_ORDERS)[number];

/** 20 MB in base64, and what stands around it. */
export const ImportedFile = z.object({ name: z.string().max(400), base64: z.base64().max(28_000_000) });

export const ImportTable = z.object({
  file: ImportedFile,
  kind: z.enum(IMPORT_KINDS),
  /** Null = the first sheet that holds anything. */
  sheet: z.string().max(200).nullable(),
  /** For each column of the file the field it fills, or null; null = as the headings suggest. */
  columns: z.array(z.enum(ALL_FIELDS).nullable()).max(200).nullable(),
  /** Null = not said; it is asked for where days such as 4/5/2024 can be read two ways. */
  dayOrder: z.enum(DAY_ORDERS).nullable(),
  /** What holds for rows that do not say it themselves. */
  method: z.enum(METHODS),
  boxType: z.enum(BOX_TYPES),
  queenPlace: z.enum(QUEEN_PLACES),
  /** Leave out rows with problems instead of taking nothing in. */
  leaveOut: z.boolean(),
});
export type ImportTable = z.infer<typeof ImportTable>;

/** Why a file cannot be read at all. */
export interface FileTrouble {
  readonly reason:
    | 'too-large'
    | 'zip-too-large'
    | 'zip-broken'
    | 'not-a-table'
    | 'empty'
    | 'too-many-rows'
    | 'too-many-columns'
    | 'too-many-cells'
    | 'cell-too-long'
    | 'quote-left-open'
    | 'not-json'
    | 'too-deep'
    | 'not-our-file'
    | 'newer-form'
    | 'contradicts';
  readonly limit?: number;
  readonly row?: number;
}

/** One thing wrong with one row. The row is numbered as a spreadsheet numbers it. */
export interface RowProblem {
  readonly row: number;
  readonly field: ImportField;
  readonly kind:
    | 'empty'
    | 'not-a-day'
    | 'not-a-number'
    | 'not-a-figure'
    | 'not-a-choice'
    | 'not-a-code'
    | 'too-long'
    | 'letters-lost'
    | 'twice'
    | 'there-already'
    | 'no-such-hive'
    | 'no-such-box'
    | 'more-than-before'
    | 'out-of-order';
  /** What stands there, cut short. */
  readonly text: string;
  /** The row or number it does not fit with; null where there is none. */
  readonly other: number | null;
}

export interface TablePreview {
  readonly sheets: readonly string[];
  readonly sheet: string | null;
  readonly headings: readonly string[];
  readonly columns: readonly (ImportField | null)[];
  readonly missing: readonly ImportField[];
  /** The first rows as they stand in the file. */
  readonly rows: readonly { readonly number: number; readonly cells: readonly string[] }[];
  readonly rowCount: number;
  /** Rows that can be taken in. */
  readonly ready: number;
  /** By row; the first few hundred. */
  readonly problems: readonly RowProblem[];
  readonly problemRows: number;
  readonly newYards: readonly string[];
  readonly dayOrder: DayOrder | null;
  /** Days that can be read two ways: say which. */
  readonly dayOrderUnclear: boolean;
}

export interface TableImported {
  readonly added: number;
  readonly leftOut: number;
  /** Whether a safety copy was made before; there is none of a demo. */
  readonly copied: boolean;
}

export const ImportWorkbook = z.object({ file: ImportedFile });

export interface WorkbookFilePreview {
  readonly name: string;
  readonly exportedOn: IsoDay;
  readonly added: number;
  readonly changed: number;
  readonly same: number;
  readonly problems: readonly WholeProblem[];
}

export interface WorkbookImported {
  readonly added: number;
  readonly changed: number;
}

/** What keeps a file of everything from being taken in. */
export interface WholeProblem {
  readonly table: string;
  /** From 1, in the list of that table. */
  readonly row: number;
  readonly kind: 'not-valid' | 'points-nowhere' | 'taken' | 'twice';
  readonly field: string;
  readonly text: string;
}

export type ImportRefusal =
  | { readonly kind: 'file-unreadable'; readonly field: 'file'; readonly trouble: FileTrouble }
  | { readonly kind: 'fields-not-matched'; readonly field: 'columns'; readonly fields: readonly ImportField[] }
  | { readonly kind: 'day-order-needed'; readonly field: 'dayOrder' }
  | { readonly kind: 'rows-with-problems'; readonly field: 'file'; readonly rows: number; readonly first: number }
  | { readonly kind: 'nothing-to-take-in'; readonly field: 'file' };
