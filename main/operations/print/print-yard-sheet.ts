import type { z } from 'zod';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import type { PaperFile, PrintYardSheet } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { compareCodes, shortCodes } from '../../../shared/kernel/box-codes.ts';
import { dayOfIso, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { resultKeysWith } from '../../../shared/model/look-key.ts';
import { type DateOrder, fullDay, paperDay } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { type YardSheetDay, type YardSheetRow, yardSheetPdf } from '../../paper/yard-sheet-pdf.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { BoxReader } from '../box-lines.ts';
import { handsOffOn, runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { quietHives } from '../quiet-hives.ts';
import { storedSettings } from '../stored-settings.ts';
import { type DayAhead, daysAhead, type OpenJob } from '../week-ahead.ts';
import { workbookWords } from '../workbook-words.ts';

const WEEK_DAYS = 7;

/** The sheet for a walk to the hives with a job and through the mating boxes; with no box yet it is a blank one. */
export async function printYardSheet(
  deskNow: Desk,
  { yardId, walkOn, paper, large, week = false }: z.input<typeof PrintYardSheet>,
): Promise<Result<PaperFile, Refusal>> {
  const desk = { ...deskNow, today: walkOn === null ? deskNow.today : dayOfIso(walkOn) };
  const { workbook, today } = desk;
  const { tables } = workbook;
  const { dateOrder: order, resultLetters } = storedSettings(tables.settings);
  const words = workbookWords(desk);
  const reader = new BoxReader(tables, today);
  const rows = tables.boxes
    .where({ retiredOn: null })
    .filter((box) => yardId === null || box.yardId === yardId)
    .toSorted((a, b) => a.walkOrder - b.walkOrder)
    .map((box) => rowOf(reader.line(box), isoOfDay(today), order, words));
  const ahead = daysAhead(tables, runningBatches(tables, today), today, WEEK_DAYS);
  const yard = yardId === null ? null : tables.yards.get(yardId);
  const pdf = await yardSheetPdf({
    words,
    yard: yard?.name ?? words.yardSheet.allYards,
    day: fullDay(today, order, words.language),
    leaveAlone: leaveAlone(desk, order, words),
    rows: [...hiveRows(tables, ahead[0]?.jobs ?? [], yardId, words), ...rows],
    week: week ? ahead.map((day) => weekDay(desk, day, order, words)) : null,
    // A box that was not opened has nothing to ring.
    keys: resultKeysWith(resultLetters).filter(({ result }) => result !== 'not-looked'),
    foot: words.yardSheet.foot(workbook.name, fullDay(deskNow.today, order, words.language)),
    paper,
    large,
    madeAt: `${isoOfDay(today)}T12:00:00Z`,
  });
  return ok({
    name: words.yardSheet.fileName(isoOfDay(today)),
    mediaType: 'application/pdf',
    base64: pdf.bytes.toString('base64'),
    pages: pdf.pages,
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
function hiveRows(
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

const titleOf = ({ step, ownTitle }: OpenJob, { stepTitles }: Words): string => ownTitle ?? stepTitles[step];

function weekDay(desk: Desk, { on, jobs }: DayAhead, order: DateOrder, words: Words): YardSheetDay {
  return {
    day: paperDay(on, order, words.language),
    // What is late is named on Today; a week of old jobs would hide what comes.
    jobs: jobs
      .filter(({ late }) => !late)
      .map((job) =>
        words.yardSheet.weekJob(titleOf(job, words), job.batch, job.codes.length === 0 ? '' : shortCodes(job.codes)),
      ),
    leaveAlone: leaveAlone({ ...desk, today: on }, order, words),
  };
}

/** Hives and boxes that must stay shut today, and until when. */
function leaveAlone({ workbook: { tables }, today }: Desk, order: DateOrder, words: Words): readonly string[] {
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
