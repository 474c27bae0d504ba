import type { BatchLine } from '../../../shared/contract/batches.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import { QUEEN_PLACES, type Queen } from '../../../shared/model/queen.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import { type DateOrder, paperDay } from '../../../shared/text/day-text.ts';
import { METHOD_WORDS } from '../../../shared/text/english/methods.ts';
import { queens as queenWords } from '../../../shared/text/english/queens.ts';
import { seasonReport as words } from '../../../shared/text/english/season-report.ts';
import type { FlowTable } from '../../paper/flowing-table.ts';
import type { SeasonReport } from '../../paper/season-report-pdf.ts';
import type { Tables } from '../../workbook/workbook.ts';

export interface ReportedBatch {
  readonly batch: Batch;
  readonly line: BatchLine;
}

/** The season in a few sentences: batches and cells, as far as they were counted. */
export function summaryLines(all: readonly ReportedBatch[]): readonly string[] {
  const earnest = all.filter(({ line }) => !line.practice).map(({ line }) => line);
  const practised = all.length - earnest.length;
  const inState = (state: BatchLine['state']) => earnest.filter((line) => line.state === state).length;
  const sum = (field: Exclude<keyof BatchTally, 'batchId'>) =>
    earnest.reduce((total, { tally }) => total + (tally[field] ?? 0), 0);
  return [
    ...(earnest.length > 0
      ? [
          [
            words.started(earnest.length, words.state(inState('closed'), inState('running'), inState('planned'))),
            words.counted(sum('given'), sum('taken'), sum('sealed')),
            words.boxed(sum('placed'), sum('emerged'), sum('laying'), sum('proved')),
          ].join(' '),
        ]
      : []),
    ...(practised > 0 ? [words.practice(practised)] : []),
  ];
}

/** Every batch with what was counted of it, in the order of the larvae. */
export function batchesTable(all: readonly ReportedBatch[], order: DateOrder): FlowTable {
  const { columns } = words;
  return {
    columns: [
      { title: columns.batch },
      { title: columns.method },
      { title: `${columns.breeder}, ${columns.builder.toLowerCase()}` },
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
      const count = (cells: number | null) => (cells === null ? words.notCounted : String(cells));
      const later = (cells: number) => (tally.placed === 0 ? words.notCounted : String(cells));
      return [
        [line.code, line.practice ? words.practiceMark : '', words.states[line.state]].filter(Boolean).join('\n'),
        line.methodName ?? METHOD_WORDS[line.method].name,
        [line.breeder?.code ?? words.notCounted, line.builder?.code ?? words.notCounted].join(', '),
        paperDay(line.larvaeGivenOn, order),
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

/** Where the queens born in the season are now, and what their keepers told. */
export function queensPart(tables: Tables, season: number): SeasonReport['queens'] {
  const born = tables.queens.where({ bornIn: season }).toSorted((a, b) => compareCodes(a.number, b.number));
  if (born.length === 0) return { line: words.noQueens, table: null, heard: null };
  const heard = Map.groupBy(
    born.flatMap((queen) => tables.queenFeedback.where({ queenId: queen.id })),
    ({ outcome }) => outcome,
  );
  const list = [...heard]
    .map(([outcome, told]) => `${queenWords.feedback.outcomes[outcome]} ${told.length}`)
    .join(', ');
  return {
    line: words.numbered(born.length),
    table: {
      columns: [
        { title: words.whereabouts.place },
        { title: words.whereabouts.count, numeric: true },
        { title: words.whereabouts.numbers },
      ],
      rows: QUEEN_PLACES.flatMap((place) => {
        const there = born.filter((queen) => queen.place === place);
        if (there.length === 0) return [];
        return [[queenWords.places[place], String(there.length), there.map(numberWithReceiver).join(', ')]];
      }),
    },
    heard: list === '' ? null : words.heard(list),
  };
}

const numberWithReceiver = ({ number, goneTo }: Queen): string =>
  goneTo === null ? number : words.goneTo(number, goneTo);

export const lessonLines = (all: readonly ReportedBatch[]): readonly string[] =>
  all.flatMap(({ batch }) => (batch.lesson ? [words.lesson(batch.code, batch.lesson)] : []));

type Gap = keyof typeof words.gaps;

/** What was not written down, each with the batches it concerns; a batch that only begins misses nothing yet. */
export function gapLines(all: readonly ReportedBatch[]): readonly string[] {
  const missing: Readonly<Record<Gap, (one: ReportedBatch) => boolean>> = {
    given: ({ line }) => line.tally.given === null,
    taken: ({ line }) => line.tally.taken === null && (line.state === 'closed' || line.tally.sealed !== null),
    sealed: ({ line }) => line.tally.sealed === null && (line.state === 'closed' || line.tally.placed > 0),
    emergence: ({ line }) => line.state === 'closed' && line.tally.emergenceKnown < line.tally.placed,
    mating: ({ line }) => line.state === 'closed' && line.tally.matingKnown < line.tally.emerged,
    open: ({ batch, line }) => line.state === 'closed' && batch.closedOn === null,
    lesson: ({ batch }) => batch.closedOn !== null && !batch.lesson,
  };
  return (Object.keys(words.gaps) as Gap[]).flatMap((gap) => {
    const batches = all.filter((one) => one.line.state !== 'planned' && missing[gap](one));
    return batches.length === 0 ? [] : [words.gap(words.gaps[gap], batches.map(({ line }) => line.code).join(', '))];
  });
}
