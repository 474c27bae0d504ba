import type { z } from 'zod';
import type { PaperFile, PrintYardSheet } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { resultKeysWith } from '../../../shared/model/look-key.ts';
import { type DateOrder, fullDay, paperDay } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import type { YardSheetDay } from '../../paper/yard-sheet-frame.ts';
import { yardSheetPdf } from '../../paper/yard-sheet-pdf.ts';
import { runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { type DayAhead, daysAhead } from '../week-ahead.ts';
import { workbookWords } from '../workbook-words.ts';
import { notePrintedSheet } from './printed-sheets.ts';
import { leaveAlone, titleOf, yardSheetContent } from './yard-sheet-content.ts';

const WEEK_DAYS = 7;

/**
 * The sheet for a walk: to the hives with a job and through the mating boxes, with no box yet a blank one; or to every
 * hive; or blank lines for any yard and day. What it says is kept, unless it is only looked at, so that it can be told later
 * whether it still holds.
 */
export async function printYardSheet(
  deskNow: Desk,
  asked: z.input<typeof PrintYardSheet>,
): Promise<Result<PaperFile, Refusal>> {
  const { yardId, walkOn, paper, large, lines = 'walk', columns = 1, squaredBack = false, week = false, look } = asked;
  const desk = { ...deskNow, today: walkOn === null ? deskNow.today : dayOfIso(walkOn) };
  const { workbook, today } = desk;
  const { tables } = workbook;
  const { dateOrder: order, resultLetters } = storedSettings(tables.settings);
  const words = workbookWords(desk);
  const ahead = week && lines !== 'blank' ? daysAhead(tables, runningBatches(tables, today), today, WEEK_DAYS) : null;
  const content = yardSheetContent(desk, { yardId, lines }, order, words);
  const yard = yardId === null ? null : tables.yards.get(yardId);
  const pdf = await yardSheetPdf({
    words,
    lines,
    yard: yard?.name ?? words.yardSheet.allYards,
    day: fullDay(today, order, words.language),
    ...content,
    week: ahead?.map((day) => weekDay(desk, day, order, words)) ?? null,
    // A box that was not opened has nothing to ring, and looks at hives are typed without letters.
    keys: lines === 'hives' ? [] : resultKeysWith(resultLetters).filter(({ result }) => result !== 'not-looked'),
    foot: words.yardSheet.foot(workbook.name, fullDay(deskNow.today, order, words.language)),
    paper,
    columns,
    large,
    squaredBack,
    madeAt: `${isoOfDay(today)}T12:00:00Z`,
  });
  if (!look) notePrintedSheet(deskNow, { walkOn: isoOfDay(today), yardId, lines });
  return ok({
    name: words.yardSheet.fileName(isoOfDay(today)),
    mediaType: 'application/pdf',
    base64: pdf.bytes.toString('base64'),
    pages: pdf.pages,
  });
}

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
