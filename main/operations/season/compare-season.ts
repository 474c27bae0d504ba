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
import { stageCount, stageRate } from '../../engine/yield/stage-rate.ts';
import type { Desk } from '../operation.ts';
import { type Counted, countedBatches } from './counted-batches.ts';

/** Take, sealing, emergence, mating and the whole way, group by group, from the kept tallies; no cell is read. */
export function compareSeason({ workbook: { tables } }: Desk, input: z.infer<typeof CompareSeason>): SeasonComparison {
  const counted = countedBatches(tables, input);
  const groups = Map.groupBy(counted, (one) => one.group.id);
  const through = counted.filter(({ tally }) => stageCount(tally, 'through') !== null).length;
  return {
    factor: input.factor,
    season: input.season,
    seasons: tables.batches.distinct('season').toReversed(),
    rows: [...groups.values()].map(compareRow).toSorted((a, b) => compareCodes(a.label, b.label)),
    runningLeftOut: counted.length - through,
  };
}

function compareRow(group: readonly Counted[]): CompareRow {
  const tallies = group.map((one) => one.tally);
  const rates = Object.fromEntries(RATE_STAGES.map((stage) => [stage, stageRate(tallies, stage)]));
  return {
    groupId: group[0]?.group.id ?? '',
    label: group[0]?.group.label ?? '',
    parts: group[0]?.group.parts ?? [],
    batchIds: group.map((one) => one.batch.id),
    rates: rates as Record<RateStage, RateFigure>,
    batchPoints: group.flatMap(({ batch, tally }) =>
      RATE_STAGES.flatMap((stage) => {
        const count = stageCount(tally, stage);
        return count ? [{ batchId: batch.id, batch: batch.code, stage, ...count }] : [];
      }),
    ),
  };
}
