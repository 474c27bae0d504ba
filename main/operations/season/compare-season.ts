import type { z } from 'zod';
import {
  type CompareRow,
  type CompareSeason,
  RATE_STAGES,
  type RateFigure,
  type RateStage,
  type SeasonComparison,
} from '../../../shared/contract/season.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { rateOfTotal } from '../../engine/yield/stage-rate.ts';
import type { GroupSum } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { factorsOf, groupOf } from './counted-batches.ts';
import { keepSeasonSums } from './keep-season-sums.ts';

/** Take, sealing, emergence, mating and the whole way, group by group, from the kept sums of each season. */
export function compareSeason({ workbook: { tables } }: Desk, input: z.infer<typeof CompareSeason>): SeasonComparison {
  const factors = factorsOf(input);
  const question = keepSeasonSums(tables, factors, input.season);
  const sums = tables.seasonSums.sums(question, input.season, input.leaveOutPractice);
  return {
    factor: input.factor,
    season: input.season,
    seasons: tables.seasonSums.seasons().toReversed(),
    rows: sums
      .map((sum): CompareRow => {
        const { id, label, parts } = groupOf(tables, factors, [sum.level, sum.other]);
        return { groupId: id, label, parts, batches: sum.batches, rates: ratesOf(sum) };
      })
      .toSorted((a, b) => compareCodes(a.label, b.label)),
    runningLeftOut: sums.reduce((left, { batches, stages }) => left + batches - stages.through.batches, 0),
  };
}

const ratesOf = ({ stages }: GroupSum): Readonly<Record<RateStage, RateFigure>> =>
  Object.fromEntries(RATE_STAGES.map((stage) => [stage, rateOfTotal(stages[stage])])) as Record<RateStage, RateFigure>;
