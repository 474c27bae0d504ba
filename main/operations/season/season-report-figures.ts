import {
  type CompareFactor,
  type CompareRow,
  RATE_STAGES,
  type RateFigure,
  type StageComparison,
  WEIGHED_STAGES,
} from '../../../shared/contract/season.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import { monthName } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { findingSentences } from '../../../shared/text/english/finding-text.ts';
import { amount, perCent, perCentRange } from '../../../shared/text/share-text.ts';
import { stageRate } from '../../engine/yield/stage-rate.ts';
import type { FlowTable } from '../../paper/flowing-table.ts';
import type { FactorReport } from '../../paper/season-report-pdf.ts';
import type { Desk } from '../operation.ts';
import { compareSeason } from './compare-season.ts';
import { compareStage } from './compare-stage.ts';
import { groupName } from './group-name.ts';

/** The stages drawn as charts: where most is lost, and where a queen is made. */
const CHARTED = ['take', 'mating'] as const;

const stageName = (words: Words, stage: (typeof RATE_STAGES)[number]): string => words.season.stages[stage].name;

/** The whole season stage by stage; each share with its counts and its range. */
export function stagesTable(tallies: readonly BatchTally[], words: Words): FlowTable {
  const { columns } = words.seasonReport;
  return {
    columns: [
      { title: columns.stage },
      { title: columns.share, numeric: true },
      { title: columns.counts },
      { title: columns.range },
      { title: columns.batches, numeric: true },
    ],
    rows: RATE_STAGES.map((stage) => {
      const { rate, successes, of, interval, batches } = stageRate(tallies, stage);
      if (rate === null || interval === null)
        return [stageName(words, stage), words.seasonReport.notCounted, '', '', ''];
      return [
        stageName(words, stage),
        perCent(rate),
        words.season.figure(amount(successes, words.language), amount(of, words.language)),
        perCentRange(interval.lower, interval.upper),
        String(batches),
      ];
    }),
  };
}

/** One factor: its figures, what can be said of them, and the charts of two stages. */
export async function factorReport(
  desk: Desk,
  season: number,
  factor: CompareFactor,
  words: Words,
): Promise<FactorReport> {
  const asked = { factor, and: null, season, leaveOutPractice: true } as const;
  const { rows } = compareSeason(desk, asked);
  // One group alone has nothing to be weighed against.
  const stages = WEIGHED_STAGES.filter((stage) => rows.filter((row) => row.rates[stage].of > 0).length > 1);
  const weighed = await Promise.all(
    stages.map((stage) => compareStage(desk, { ...asked, stage, allowingFor: null, ahead: 1 })),
  );
  const names = new Map(rows.map((row) => [row.groupId, groupName(row, words)]));
  const name = (groupId: string): string => names.get(groupId) ?? '';
  const said = weighed.flatMap((one) => saidOf(one, name, words));
  return {
    factor: words.season.factors[factor],
    table: figuresTable(factor, rows, words),
    said: said.length > 0 ? said : [words.seasonReport.nothingToCompare(words.season.factors[factor])],
    charts: weighed.filter(({ stage }) => isCharted(stage)).map((one) => chartOf(factor, one, name, words)),
  };
}

/** By month, figures alone: months differ by weather and stock, so nothing is weighed. */
export function monthReport(desk: Desk, season: number, words: Words): FactorReport {
  const asked = { factor: 'month', and: null, season, leaveOutPractice: true } as const;
  const { rows } = compareSeason(desk, asked);
  const name = (row: CompareRow): string => {
    const month = Number(row.parts[0]?.label);
    return month >= 1 && month <= 12 ? monthName(month, words.language) : groupName(row, words);
  };
  return { factor: words.season.factors.month, table: figuresTable('month', rows, words, name), said: [], charts: [] };
}

const isCharted = (stage: StageComparison['stage']): boolean => CHARTED.some((one) => one === stage);

function saidOf(weighed: StageComparison, name: (groupId: string) => string, words: Words): readonly string[] {
  if (!weighed.lead) return [];
  const { certainty, rest } = findingSentences(words.season, weighed, weighed.lead, name);
  return [words.seasonReport.stageSaid(stageName(words, weighed.stage), certainty, rest)];
}

function figuresTable(
  factor: CompareFactor,
  rows: readonly CompareRow[],
  words: Words,
  name = (row: CompareRow) => groupName(row, words),
): FlowTable {
  const { columns } = words.seasonReport;
  return {
    columns: [
      { title: capital(words.season.factors[factor]) },
      { title: columns.batches, numeric: true },
      ...RATE_STAGES.map((stage) => ({ title: capital(stageName(words, stage)) })),
    ],
    rows: rows.map((row) => [
      name(row),
      String(row.batches),
      ...RATE_STAGES.map((stage) => figureText(row.rates[stage], words)),
    ]),
  };
}

/** "74 %", its counts and its range, one under another. */
function figureText({ rate, successes, of, interval }: RateFigure, words: Words): string {
  if (rate === null || interval === null) return words.seasonReport.notCounted;
  return [
    perCent(rate),
    words.season.figure(amount(successes, words.language), amount(of, words.language)),
    perCentRange(interval.lower, interval.upper),
  ].join('\n');
}

function chartOf(
  factor: CompareFactor,
  { stage, groups }: StageComparison,
  name: (groupId: string) => string,
  words: Words,
): FactorReport['charts'][number] {
  return {
    title: words.seasonReport.chart(stageName(words, stage), words.season.factors[factor]),
    rows: groups.map(({ groupId, mean, lower, upper, batches }) => ({
      label: name(groupId),
      mean,
      lower,
      upper,
      note: words.seasonReport.chartRow(perCent(mean), batches),
    })),
  };
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
