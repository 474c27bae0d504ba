import type { BatchLine } from '../../../shared/contract/batches.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { addDays, type Day, dateOfDay, dayOfDate, dayOfIso, earlierOf, laterOf } from '../../../shared/kernel/day.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import { QUEEN_PLACES, type Queen } from '../../../shared/model/queen.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import { type DateOrder, monthName, paperDay } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import type { FlowTable } from '../../paper/flowing-table.ts';
import type { SeasonReport } from '../../paper/season-report-pdf.ts';
import type { Tables } from '../../workbook/workbook.ts';

export interface ReportedBatch {
  readonly batch: Batch;
  readonly line: BatchLine;
}

/** The season in a few sentences: batches and cells, as far as they were counted. */
export function summaryLines(all: readonly ReportedBatch[], words: Words): readonly string[] {
  const earnest = all.filter(({ line }) => !line.practice).map(({ line }) => line);
  const practised = all.length - earnest.length;
  const inState = (state: BatchLine['state']) => earnest.filter((line) => line.state === state).length;
  const sum = (field: Exclude<keyof BatchTally, 'batchId'>) =>
    earnest.reduce((total, { tally }) => total + (tally[field] ?? 0), 0);
  return [
    ...(earnest.length > 0
      ? [
          [
            words.seasonReport.started(
              earnest.length,
              words.seasonReport.state(inState('closed'), inState('running'), inState('planned')),
            ),
            words.seasonReport.counted(sum('given'), sum('taken'), sum('sealed')),
            words.seasonReport.boxed(sum('placed'), sum('emerged'), sum('laying'), sum('proved')),
          ].join(' '),
        ]
      : []),
    ...(practised > 0 ? [words.seasonReport.practice(practised)] : []),
  ];
}

/** Every batch with what was counted of it, in the order of the larvae. */
export function batchesTable(all: readonly ReportedBatch[], order: DateOrder, words: Words): FlowTable {
  const { columns } = words.seasonReport;
  return {
    columns: [
      { title: columns.batch },
      { title: columns.method },
      { title: columns.colonies },
      { title: columns.larvae },
      ...[
        columns.given,
        columns.taken,
        columns.sealed,
        columns.boxed,
        columns.emerged,
        columns.laying,
        columns.proved,
      ].map((title) => ({ title, numeric: true })),
    ],
    rows: all.map(({ line }) => {
      const { tally } = line;
      const count = (cells: number | null) => (cells === null ? words.seasonReport.notCounted : String(cells));
      const later = (cells: number) => (tally.placed === 0 ? words.seasonReport.notCounted : String(cells));
      return [
        [line.code, line.practice ? words.seasonReport.practiceMark : '', words.seasonReport.states[line.state]]
          .filter(Boolean)
          .join('\n'),
        line.methodName ?? words.methods[line.method].name,
        [line.breeder?.code ?? words.seasonReport.notCounted, line.builder?.code ?? words.seasonReport.notCounted].join(
          ', ',
        ),
        paperDay(line.larvaeGivenOn, order, words.language),
        count(tally.given),
        count(tally.taken),
        count(tally.sealed),
        later(tally.placed),
        later(tally.emerged),
        later(tally.laying),
        later(tally.proved),
      ];
    }),
  };
}

/** Every batch on one axis of days, whole months long, in the order of the larvae. */
export function streamsOf(all: readonly ReportedBatch[], order: DateOrder, words: Words): SeasonReport['streams'] {
  const batches = all.map(({ line: { code, stream, emergence, larvaeGivenOn } }) => ({
    label: code,
    stages: stream.bands.map(({ from, to }) => ({ from: dayOfIso(from), to: dayOfIso(to) })),
    emergence: { earliest: dayOfIso(emergence.earliest), latest: dayOfIso(emergence.latest) },
    inWords: words.seasonReport.streamInWords(
      code,
      paperDay(larvaeGivenOn, order, words.language),
      paperDay(emergence.expected, order, words.language),
    ),
  }));
  const days = batches.flatMap(({ stages }) => stages.flatMap(({ from, to }) => [from, to]));
  const [first = 0 as Day] = days;
  const begin = days.reduce((a, b) => earlierOf(a, b), first);
  const firsts = monthsOver(
    begin,
    days.reduce((a, b) => laterOf(a, b), first),
  );
  const from = firsts[0] ?? begin;
  const months = firsts.slice(0, -1).map((on) => ({ on, name: monthName(dateOfDay(on).month, words.language) }));
  return { axis: { from, to: addDays(firsts.at(-1) ?? from, -1), months }, batches };
}

/** First days of the months from that of `from` to the one after that of `to`. */
function monthsOver(from: Day, to: Day): readonly Day[] {
  const firsts: Day[] = [];
  const { year, month } = dateOfDay(from);
  for (let n = month - 1; ; n += 1) {
    const on = dayOfDate({ year: year + Math.floor(n / 12), month: (n % 12) + 1, dayOfMonth: 1 });
    firsts.push(on);
    if (on > to) return firsts;
  }
}

/** Where the queens born in the season are now, and what their keepers told. */
export function queensPart(tables: Tables, season: number, words: Words): SeasonReport['queens'] {
  const born = tables.queens.where({ bornIn: season }).toSorted((a, b) => compareCodes(a.number, b.number));
  if (born.length === 0) return { line: words.seasonReport.noQueens, table: null, heard: null };
  const heard = Map.groupBy(
    born.flatMap((queen) => tables.queenFeedback.where({ queenId: queen.id })),
    ({ outcome }) => outcome,
  );
  const list = [...heard]
    .map(([outcome, told]) => `${words.queens.feedback.outcomes[outcome]} ${told.length}`)
    .join(', ');
  return {
    line: words.seasonReport.numbered(born.length),
    table: {
      columns: [
        { title: words.seasonReport.whereabouts.place },
        { title: words.seasonReport.whereabouts.count, numeric: true },
        { title: words.seasonReport.whereabouts.numbers },
      ],
      rows: QUEEN_PLACES.flatMap((place) => {
        const there = born.filter((queen) => queen.place === place);
        if (there.length === 0) return [];
        return [
          [
            words.queens.places[place],
            String(there.length),
            there.map((queen) => numberWithReceiver(queen, words)).join(', '),
          ],
        ];
      }),
    },
    heard: list === '' ? null : words.seasonReport.heard(list),
  };
}

const numberWithReceiver = ({ number, goneTo }: Queen, words: Words): string =>
  goneTo === null ? number : words.seasonReport.goneTo(number, goneTo);

export const lessonLines = (all: readonly ReportedBatch[], words: Words): readonly string[] =>
  all.flatMap(({ batch }) => (batch.lesson ? [words.seasonReport.lesson(batch.code, batch.lesson)] : []));

type Gap = keyof Words['seasonReport']['gaps'];

/** What was not written down, each with the batches it concerns; a batch that only begins misses nothing yet. */
export function gapLines(all: readonly ReportedBatch[], words: Words): readonly string[] {
  const missing: Readonly<Record<Gap, (one: ReportedBatch) => boolean>> = {
    given: ({ line }) => line.tally.given === null,
    taken: ({ line }) => line.tally.taken === null && (line.state === 'closed' || line.tally.sealed !== null),
    sealed: ({ line }) => line.tally.sealed === null && (line.state === 'closed' || line.tally.placed > 0),
    emergence: ({ line }) => line.state === 'closed' && line.tally.emergenceKnown < line.tally.placed,
    mating: ({ line }) => line.state === 'closed' && line.tally.matingKnown < line.tally.emerged,
    open: ({ batch, line }) => line.state === 'closed' && batch.closedOn === null,
    lesson: ({ batch }) => batch.closedOn !== null && !batch.lesson,
  };
  return (Object.keys(words.seasonReport.gaps) as Gap[]).flatMap((gap) => {
    const batches = all.filter((one) => one.line.state !== 'planned' && missing[gap](one));
    return batches.length === 0
      ? []
      : [words.seasonReport.gap(words.seasonReport.gaps[gap], batches.map(({ line }) => line.code).join(', '))];
  });
}
