import type { z } from 'zod';
import type { PaperFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { PrintSeasonReport } from '../../../shared/contract/season.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { fullDay } from '../../../shared/text/day-text.ts';
import { season as seasonWords } from '../../../shared/text/english/season.ts';
import { seasonReport as words } from '../../../shared/text/english/season-report.ts';
import { seasonReportPdf } from '../../paper/season-report-pdf.ts';
import { batchLine } from '../batch-lines.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { factorReport, stagesTable } from './season-report-figures.ts';
import { batchesTable, gapLines, lessonLines, queensPart, summaryLines } from './season-report-story.ts';

const FACTORS = ['method', 'builder', 'breeder'] as const;

/** The report of one season as a paper: practice is named, and left out of the figures. Changes nothing. */
export async function printSeasonReport(
  desk: Desk,
  { season, paper, large }: z.infer<typeof PrintSeasonReport>,
): Promise<Result<PaperFile, Refusal>> {
  const { workbook, today } = desk;
  const { tables } = workbook;
  const batches = tables.batches.where({ season });
  if (batches.length === 0) return refuse({ kind: 'season-without-batches', field: 'season', season });
  const lines = batches
    .map((batch) => ({ batch, line: batchLine(tables, batch, today) }))
    .toSorted((a, b) => (a.line.larvaeGivenOn < b.line.larvaeGivenOn ? -1 : 1));
  const { dateOrder } = storedSettings(tables.settings);
  const pdf = await seasonReportPdf({
    season,
    paper,
    large,
    foot: words.foot(workbook.name, fullDay(today, dateOrder), workbook.changeNumber),
    madeAt: `${isoOfDay(today)}T12:00:00Z`,
    summary: summaryLines(lines),
    stages: stagesTable(lines.flatMap(({ line }) => (line.practice ? [] : [line.tally]))),
    factors: await Promise.all(FACTORS.map((factor) => factorReport(desk, season, factor))),
    notes: [words.rangeNote, seasonWords.assumed],
    batches: batchesTable(lines, dateOrder),
    queens: queensPart(tables, season),
    lessons: lessonLines(lines),
    gaps: gapLines(lines),
  });
  return ok({
    name: words.fileName(season),
    mediaType: 'application/pdf',
    base64: pdf.bytes.toString('base64'),
    pages: pdf.pages,
  });
}
