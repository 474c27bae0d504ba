import type { Words } from '../../shared/text/english/english.ts';
import { perCentRange } from '../../shared/text/share-text.ts';
import { type FlowingChoice, type FlowingPaper, flowingPaper } from './flowing-paper.ts';
import type { FlowTable } from './flowing-table.ts';
import { drawRangeChart, type RangeRow, rangeChartHeight } from './range-chart.ts';
import { drawSeasonStreams, type SeasonStream, type StreamAxis, seasonStreamsHeight } from './season-streams.ts';

export interface FactorReport {
  readonly factor: string;
  readonly table: FlowTable;
  /** What can be said, one sentence or several a stage. */
  readonly said: readonly string[];
  readonly charts: readonly { readonly title: string; readonly rows: readonly RangeRow[] }[];
}

export interface SeasonReport extends Omit<FlowingChoice, 'title' | 'page'> {
  /** In the language of the workbook. */
  readonly words: Words;
  readonly season: number;
  readonly summary: readonly string[];
  readonly stages: FlowTable;
  readonly factors: readonly FactorReport[];
  /** How ranges and shares are to be read. */
  readonly notes: readonly string[];
  readonly batches: FlowTable;
  /** All batches on the days of the season, each also in words. */
  readonly streams: {
    readonly axis: StreamAxis;
    readonly batches: readonly (SeasonStream & { readonly inWords: string })[];
  };
  readonly queens: { readonly line: string; readonly table: FlowTable | null; readonly heard: string | null };
  readonly lessons: readonly string[];
  readonly gaps: readonly string[];
}

/** A season on two to five pages: figures with what they rest on, what can be said, and what is not known. */
export async function seasonReportPdf(
  report: SeasonReport,
): Promise<{ readonly bytes: Buffer; readonly pages: number }> {
  const words = report.words.seasonReport;
  const title = words.title(report.season);
  const paper = flowingPaper({ ...report, title, page: words.page, serif: true });
  const { headings } = words;
  paper.heading(title, 'H1');
  for (const line of report.summary) paper.paragraph(line);
  putStreams(paper, report.streams, words.streams);
  paper.heading(headings.stages, 'H2');
  paper.table(report.stages);
  for (const factor of report.factors) putFactor(paper, factor, words.headings.by);
  for (const note of report.notes) paper.paragraph(note);
  paper.heading(headings.batches, 'H2');
  paper.table(report.batches);
  paper.paragraph(words.key);
  paper.heading(headings.queens, 'H2');
  paper.paragraph(report.queens.line);
  if (report.queens.table) paper.table(report.queens.table);
  if (report.queens.heard) paper.paragraph(report.queens.heard);
  paper.heading(headings.lessons, 'H2');
  putList(paper, report.lessons, words.noLessons);
  paper.heading(headings.changes, 'H2');
  paper.blanks(CHANGE_LINES, words.changesLine);
  paper.heading(headings.gaps, 'H2');
  putList(paper, report.gaps, words.noGaps);
  return paper.finish();
}

/** Enough for what one changes in a year. */
const CHANGE_LINES = 4;

/** So many batches have room on one page. */
const STREAMS_ON_PAGE = 24;

function putStreams(paper: FlowingPaper, { axis, batches }: SeasonReport['streams'], caption: string): void {
  for (let from = 0; from < batches.length; from += STREAMS_ON_PAGE) {
    const some = batches.slice(from, from + STREAMS_ON_PAGE);
    const height = seasonStreamsHeight(paper.sizes, some.length);
    if (from === 0) paper.caption(caption, height);
    paper.figure(height, some.map(({ inWords }) => inWords).join('; '), (flow) => drawSeasonStreams(flow, axis, some));
  }
}

function putFactor(
  paper: FlowingPaper,
  { factor, table, said, charts }: FactorReport,
  by: (factor: string) => string,
): void {
  paper.heading(by(factor), 'H2');
  paper.table(table);
  for (const { title, rows } of charts) {
    paper.caption(title, rangeChartHeight(paper.sizes, rows.length));
    paper.figure(rangeChartHeight(paper.sizes, rows.length), inWords(title, rows), (flow) =>
      drawRangeChart(flow, rows),
    );
  }
  for (const line of said) paper.paragraph(line);
}

const inWords = (title: string, rows: readonly RangeRow[]): string =>
  `${title}. ${rows.map(({ label, note, lower, upper }) => `${label}: ${note}, ${perCentRange(lower, upper)}`).join('; ')}`;

function putList(paper: FlowingPaper, lines: readonly string[], none: string): void {
  if (lines.length === 0) paper.paragraph(none);
  else paper.list(lines);
}
