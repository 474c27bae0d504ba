import type { BoxLine } from '../../../shared/contract/boxes.ts';
import type { YardSheetLines } from '../../../shared/contract/print.ts';
import { compareCodes, shortCodes } from '../../../shared/kernel/box-codes.ts';
import { type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { type DateOrder, paperDay } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import type { YardSheetRow } from '../../paper/yard-sheet-frame.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { BoxReader } from '../box-lines.ts';
import { handsOffOn, type RunningBatch, runningBatches } from '../hands-off.ts';
import { hiveLine, hivesInTypingOrder, lastHiveLook } from '../hive-lines.ts';
import type { Desk } from '../operation.ts';
import { quietHives } from '../quiet-hives.ts';
import { daysAhead, type OpenJob } from '../week-ahead.ts';

/** What a yard sheet says that may change after it was printed. */
export interface YardSheetContent {
  readonly rows: readonly YardSheetRow[];
  readonly leaveAlone: readonly string[];
}

/** The lines of the sheet for the desk's day, and what must be left alone on it. */
export function yardSheetContent(
  desk: Desk,
  { yardId, lines }: { readonly yardId: string | null; readonly lines: YardSheetLines },
  order: DateOrder,
  words: Words,
): YardSheetContent {
  const { workbook, today } = desk;
  const running = runningBatches(workbook.tables, today);
  const jobs = () => daysAhead(workbook.tables, running, today, 1)[0]?.jobs ?? [];
  const rows = {
    walk: () => [...jobRows(workbook.tables, jobs(), yardId, words), ...boxRows(desk, yardId, order, words)],
    hives: () => hiveRows(desk, running, yardId, order, words),
    blank: () => [],
  };
  return { rows: rows[lines](), leaveAlone: lines === 'blank' ? [] : leaveAlone(desk, order, words) };
}

/** The boxes in walking order. */
function boxRows(
  { workbook: { tables }, today }: Desk,
  yardId: string | null,
  order: DateOrder,
  words: Words,
): readonly YardSheetRow[] {
  const reader = new BoxReader(tables, today);
  return tables.boxes
    .where({ retiredOn: null })
    .filter((box) => yardId === null || box.yardId === yardId)
    .toSorted((a, b) => a.walkOrder - b.walkOrder)
    .map((box) => rowOf(reader.line(box), isoOfDay(today), order, words));
}

/** Every hive in the order in which looks at hives are typed. */
function hiveRows(
  desk: Desk,
  running: readonly RunningBatch[],
  yardId: string | null,
  order: DateOrder,
  words: Words,
): readonly YardSheetRow[] {
  const { workbook, today } = desk;
  const { language, yardSheet } = words;
  return hivesInTypingOrder(workbook.tables, yardId).map((colony) => {
    const { code, name, place, yard, handsOff, newQueen } = hiveLine(workbook.tables, running, colony, today);
    const last = lastHiveLook(workbook.tables, colony.id, isoOfDay(today));
    const until = [handsOff?.until, newQueen?.until]
      .filter((day) => day !== undefined)
      .toSorted()
      .at(-1);
    const seen = last ? yardSheet.lastHive(paperDay(last.lookedOn, order, language), last.note) : '';
    const where = [name, yardId === null ? yard : null, place].filter(Boolean).join(', ');
    return until === undefined
      ? { code, kind: 'hive', doing: where, last: seen }
      : { code, kind: 'hands-off', doing: yardSheet.handsOff(paperDay(until, order, language)), last: where };
  });
}

/** What to do at a box, and what is known of it: its batch, and what was seen last. ISO days compare as text. */
function rowOf(line: BoxLine, today: IsoDay, order: DateOrder, words: Words): YardSheetRow {
  const seen =
    line.lastResult && line.lastLookOn
      ? words.yardSheet.last(words.looks[line.lastResult].name, paperDay(line.lastLookOn, order, words.language))
      : '';
  const known = { code: line.code, last: [line.batch, line.breeder, seen].filter(Boolean).join('  ') };
  if (line.handsOffUntil !== null)
    return {
      ...known,
      kind: 'hands-off',
      doing: words.yardSheet.handsOff(paperDay(line.handsOffUntil, order, words.language)),
    };
  const doing = words.yardSheet.doing[line.state];
  const from = line.state === 'laying' ? line.sealedBroodLookOn : line.state === 'virgin' ? line.firstLookOn : null;
  return {
    ...known,
    kind: line.state === 'free' ? 'free' : 'look',
    doing: from === null || from <= today ? doing : words.yardSheet.from(doing, paperDay(from, order, words.language)),
  };
}

/** Hives with a job on the day of the walk, before the boxes. */
function jobRows(
  tables: Tables,
  jobs: readonly OpenJob[],
  yardId: string | null,
  words: Words,
): readonly YardSheetRow[] {
  const here = jobs.filter(
    ({ colonyId }) => colonyId !== null && (yardId === null || tables.colonies.get(colonyId)?.yardId === yardId),
  );
  return [...Map.groupBy(here, ({ codes }) => codes[0] ?? '')]
    .toSorted(([a], [b]) => compareCodes(a, b))
    .map(([code, ofHive]) => ({
      code,
      kind: 'hive',
      doing: jobsInWords(ofHive, words),
      last: [...new Set(ofHive.map(({ batch }) => batch))].join(', '),
    }));
}

/** Two jobs have room in a line; of more, the one that came up last, and how many there are. */
function jobsInWords(jobs: readonly OpenJob[], words: Words): string {
  const titles = jobs.map((job) => titleOf(job, words));
  return titles.length <= 2 ? titles.join(', ') : `${titles.at(-1)}, ${words.yardSheet.moreJobs(titles.length - 1)}`;
}

export const titleOf = ({ step, ownTitle }: OpenJob, { stepTitles }: Words): string => ownTitle ?? stepTitles[step];

/** Hives and boxes that must stay shut today, and until when. */
export function leaveAlone({ workbook: { tables }, today }: Desk, order: DateOrder, words: Words): readonly string[] {
  const shut = handsOffOn(runningBatches(tables, today), today).flatMap(({ batch, span, colonyId }) => {
    const until = paperDay(span.to, order, words.language);
    if (span.place === 'boxes') {
      const codes = tables.placements
        .where({ batchId: batch.id, endedOn: null })
        .flatMap(({ boxId }) => tables.boxes.get(boxId)?.code ?? []);
      return codes.length === 0 ? [] : [words.yardSheet.leaveAloneOne(shortCodes(codes), until)];
    }
    const colony = colonyId === null ? null : tables.colonies.get(colonyId);
    return colony ? [words.yardSheet.leaveAloneOne(colony.code, until)] : [];
  });
  const quiet = quietHives(tables, today).map(({ code, until }) =>
    words.yardSheet.leaveAloneOne(code, paperDay(until, order, words.language)),
  );
  // A hive may be shut for both reasons; with the same last day it is said once.
  return [...new Set([...shut, ...quiet])];
}
