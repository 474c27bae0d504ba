import { TRAIT_ROWS } from '../../../shared/biology/stock-traits.ts';
import type { HiveRecords, TestLine, TraitFigure } from '../../../shared/contract/stock.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import { STOCK_TESTS, STOCK_TRAITS, type StockTestKind, type StockTrait } from '../../../shared/model/stock.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { testFigure } from '../../engine/stock/test-figures.ts';
import type { FlowTable } from '../../paper/flowing-table.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { traitFigures } from './get-hive-records.ts';
import type { Writing } from './hive-paper-tables.ts';

type StockWords = Words['stock'];

/** The three traits of one hive with the number of scores behind each figure; no row at all before the first score. */
export function scoresTable({ scores, summary }: HiveRecords, stock: StockWords, writing: Writing): FlowTable {
  const { trait, value, n, last } = stock.scores.columns;
  const lastOf = (wanted: StockTrait) =>
    scores
      .filter((one) => one.trait === wanted)
      .slice(0, SHOWN_SCORES)
      .map(
        ({ score, scoredOn, note }) =>
          `${writing.words.score(score)} (${[writing.day(scoredOn), note].filter(Boolean).join(', ')})`,
      )
      .join(', ');
  return {
    columns: [{ title: trait }, { title: value }, { title: n, numeric: true }, { title: last }],
    rows:
      scores.length === 0
        ? []
        : STOCK_TRAITS.map((one) => [
            stock.traits[one].name,
            figureText(one, summary[one], stock, writing),
            String(summary[one].n),
            lastOf(one),
          ]),
  };
}

const SHOWN_SCORES = 4;

function figureText(trait: StockTrait, { n, value, enough }: TraitFigure, stock: StockWords, writing: Writing): string {
  if (value === null) return writing.words.notWritten;
  const text = writing.words.score(value);
  return enough ? text : `${text}, ${stock.tooFew(n, TRAIT_ROWS[trait].fewest)}`;
}

/** Each test of one hive with what was counted. */
export function testsTable(tests: readonly TestLine[], stock: StockWords, writing: Writing): FlowTable {
  const { day, kind, figure, counted, note } = stock.testing.columns;
  return {
    columns: [day, kind, figure, counted, note].map((title) => ({ title })),
    rows: tests.map((test) => [
      writing.day(test.testedOn),
      stock.tests[test.kind].name,
      test.figure === null ? writing.words.blank : stock.tests[test.kind].figure(test.figure, writing.measures),
      [
        test.outOf === null ? null : stock.testing.of(test.counted, test.outOf),
        test.hours === null ? null : stock.testing.after(test.hours),
      ]
        .filter(Boolean)
        .join(', ') || writing.words.blank,
      writing.orBlank(test.note),
    ]),
  };
}

/** The kinds of test of which nothing was written down, in one sentence; null where all were. */
export function missingTests(tests: readonly TestLine[], stock: StockWords, writing: Writing): string | null {
  const missing = STOCK_TESTS.filter((kind) => tests.every((test) => test.kind !== kind));
  return missing.length === 0 ? null : writing.words.missing(missing.map((kind) => stock.tests[kind].name).join(', '));
}

/** What is known of one hive as stock from one year. */
export interface StockOfYear {
  readonly traits: Readonly<Record<StockTrait, TraitFigure>>;
  readonly mites: TestLine | null;
  readonly hygiene: TestLine | null;
}

const MITES: readonly StockTestKind[] = ['mite-wash', 'mite-fall'];
const HYGIENE: readonly StockTestKind[] = ['pin-test', 'freeze-test'];

export function stockOfYear(tables: Tables, colonyId: string, within: (day: IsoDay) => boolean): StockOfYear {
  const scores = tables.stockScores.where({ colonyId }).filter(({ scoredOn }) => within(scoredOn));
  const tests = tables.stockTests
    .where({ colonyId })
    .filter(({ testedOn }) => within(testedOn))
    .toSorted((a, b) => (a.testedOn < b.testedOn ? -1 : 1));
  const latest = (kinds: readonly StockTestKind[]): TestLine | null => {
    const test = tests.findLast(({ kind }) => kinds.includes(kind));
    return test ? { ...test, figure: testFigure(test) } : null;
  };
  return {
    traits: traitFigures((trait) => scores.filter((one) => one.trait === trait).map(({ score }) => score)),
    mites: latest(MITES),
    hygiene: latest(HYGIENE),
  };
}

/** One row a hive: its figures of the year with their n, and its latest tests; in words where nothing was written down. */
export function stockTable(
  hives: readonly { readonly code: string; readonly stock: StockOfYear }[],
  stock: StockWords,
  writing: Writing,
): FlowTable {
  const { words, columns } = writing;
  const figure = ({ n, value }: TraitFigure) =>
    value === null ? words.notWritten : `${words.score(value)} (${stock.n(n)})`;
  const test = (line: TestLine | null) =>
    line === null
      ? words.notWritten
      : [
          stock.tests[line.kind].name,
          line.figure === null ? words.blank : stock.tests[line.kind].figure(line.figure, writing.measures),
          writing.day(line.testedOn),
        ].join(', ');
  return {
    columns: [
      columns.hive,
      ...STOCK_TRAITS.map((trait) => stock.traits[trait].name),
      columns.mites,
      columns.hygiene,
    ].map((title) => ({ title })),
    rows: hives.map(({ code, stock: known }) => [
      code,
      ...STOCK_TRAITS.map((trait) => figure(known.traits[trait])),
      test(known.mites),
      test(known.hygiene),
    ]),
  };
}
