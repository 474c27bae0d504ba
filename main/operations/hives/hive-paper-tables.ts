import type { HiveMoveLine } from '../../../shared/contract/stock.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { Feeding } from '../../../shared/model/feeding.ts';
import type { Treatment } from '../../../shared/model/hive-record.ts';
import type { HiveLook } from '../../../shared/model/look.ts';
import { paperDay } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { feedAmountText, type Measures } from '../../../shared/text/feed-amount.ts';
import type { FlowTable } from '../../paper/flowing-table.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { workbookWords } from '../workbook-words.ts';

/** How days and gaps are written on the papers of hives. */
export interface Writing {
  readonly words: Words['hivePapers'];
  readonly columns: Words['hivePapers']['columns'];
  readonly measures: Measures;
  day(day: IsoDay): string;
  dayOrBlank(day: IsoDay | null): string;
  orBlank(text: string | null | undefined): string;
  feed(feeding: Feeding): string;
  howMuch(feeding: Feeding): string;
}

export function writingOf(desk: Desk): Writing {
  const { hivePapers: words, feeding, language } = workbookWords(desk);
  const { dateOrder, measures } = storedSettings(desk.workbook.tables.settings);
  const day = (on: IsoDay) => `${paperDay(on, dateOrder, language)} ${on.slice(0, 4)}`;
  return {
    words,
    columns: words.columns,
    measures,
    day,
    dayOrBlank: (on) => (on === null ? words.blank : day(on)),
    orBlank: (text) => text || words.blank,
    feed: ({ feed, ownFeed }) => ownFeed ?? feeding.feeds[feed],
    howMuch: (amount) => feedAmountText(amount, measures, language) || words.blank,
  };
}

/** A record with the hive it belongs to; the column of hives is left out on the page of one hive. */
export interface OfHive<Row> {
  readonly hive: string | null;
  readonly row: Row;
}

const withHive = (hives: readonly (string | null)[], table: FlowTable, writing: Writing): FlowTable =>
  hives.some((hive) => hive !== null)
    ? {
        columns: [...table.columns, { title: writing.columns.hive }],
        rows: table.rows.map((row, index) => [...row, writing.orBlank(hives[index])]),
      }
    : table;

export const treatmentsTable = (all: readonly OfHive<Treatment>[], writing: Writing): FlowTable =>
  withHive(
    all.map(({ hive }) => hive),
    {
      columns: [
        writing.columns.from,
        writing.columns.to,
        writing.columns.product,
        writing.columns.amount,
        writing.columns.reason,
        writing.columns.paper,
        writing.columns.note,
      ].map((title) => ({ title })),
      rows: all.map(({ row }) => [
        writing.day(row.fromOn),
        writing.dayOrBlank(row.toOn),
        row.product,
        ...[row.amount, row.reason, row.paper, row.note].map(writing.orBlank),
      ]),
    },
    writing,
  );

export const feedingTable = (feedings: readonly Feeding[], writing: Writing): FlowTable => ({
  columns: [writing.columns.day, writing.columns.feed, writing.columns.amount, writing.columns.note].map((title) => ({
    title,
  })),
  rows: feedings.map((row) => [
    writing.day(row.fedOn),
    writing.feed(row),
    writing.howMuch(row),
    writing.orBlank(row.note),
  ]),
});

export const movesTable = (all: readonly OfHive<HiveMoveLine>[], writing: Writing): FlowTable =>
  withHive(
    all.map(({ hive }) => hive),
    {
      columns: [
        writing.columns.day,
        writing.columns.from,
        writing.columns.to,
        writing.columns.place,
        writing.columns.paper,
        writing.columns.note,
      ].map((title) => ({
        title,
      })),
      rows: all.map(({ row }) => [
        writing.day(row.movedOn),
        ...[row.from, row.to, row.place, row.paper, row.note].map(writing.orBlank),
      ]),
    },
    writing,
  );

export const looksTable = (looks: readonly HiveLook[], writing: Writing): FlowTable => ({
  columns: [
    { title: writing.columns.day },
    { title: writing.columns.strength, numeric: true },
    { title: writing.columns.food, numeric: true },
    { title: writing.columns.note },
  ],
  rows: looks.map(({ lookedOn, strength, food, note }) => [
    writing.day(lookedOn),
    writing.orBlank(strength === null ? null : String(strength)),
    writing.orBlank(food === null ? null : String(food)),
    note,
  ]),
});
