import type { z } from 'zod';
import type { PaperFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { PrintSeasonReport } from '../../../shared/contract/season.ts';
import { PROGRAM_VERSION } from '../../../shared/kernel/program-version.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { seasonReportPdf } from '../../paper/season-report-pdf.ts';
import { batchLine } from '../batch-lines.ts';
import type { Desk } from '../operation.ts';
import { paperFoot } from '../paper-file.ts';
import { storedSettings } from '../stored-settings.ts';
import { workbookWords } from '../workbook-words.ts';
import { factorReport, monthReport, stagesTable } from './season-report-figures.ts';
import { batchesTable, gapLines, lessonLines, queensPart, streamsOf, summaryLines } from './season-report-story.ts';

const FACTORS = ['method', 'builder', 'breeder'] as const;

/** The report of one season as a paper: practice is named, and left out of the figures. Changes nothing. */
export async function printSeasonReport(
  desk: Desk,
  { season, paper, large }: z.infer<typeof PrintSeasonReport>,
): Promise<Result<PaperFile, Refusal>> {
  const { workbook, today } = desk;
  const { tables } = workbook;
  const words = workbookWords(desk);
  const batches = tables.batches.where({ season });
  if (batches.length === 0) return refuse({ kind: 'season-without-batches', field: 'season', season });
  const lines = batches
    .map((batch) => ({ batch, line: batchLine(tables, batch, today) }))
    .toSorted((a, b) => (a.line.larvaeGivenOn < b.line.larvaeGivenOn ? -1 : 1));
  const { dateOrder } = storedSettings(tables.settings);
  const pdf = await seasonReportPdf({
    words,
    season,
    paper,
    large,
    ...paperFoot(desk),
    foot: `${paperFoot(desk).foot}, ${words.frame.product} ${PROGRAM_VERSION}`,
    summary: summaryLines(lines, words),
    stages: stagesTable(
      lines.flatMap(({ line }) => (line.practice ? [] : [line.tally])),
      words,
    ),
    factors: [
      ...(await Promise.all(FACTORS.map((factor) => factorReport(desk, season, factor, words)))),
      monthReport(desk, season, words),
    ],
    streams: streamsOf(lines, dateOrder, words),
    notes: [words.seasonReport.rangeNote, words.season.assumed],
    batches: batchesTable(lines, dateOrder, words),
    queens: queensPart(tables, season, words),
    lessons: lessonLines(lines, words),
    gaps: gapLines(lines, words),
  });
  return ok({
    name: words.seasonReport.fileName(season),
    mediaType: 'application/pdf',
    base64: pdf.bytes.toString('base64'),
    pages: pdf.pages,
  });
}
