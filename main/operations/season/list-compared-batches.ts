import type { z } from 'zod';
import { type ComparedBatch, type CompareSeason, RATE_STAGES } from '../../../shared/contract/season.ts';
import { stageCountsOf } from '../../engine/yield/stage-rate.ts';
import type { Desk } from '../operation.ts';
import { countedBatches } from './counted-batches.ts';

/** The batches behind a comparison, each with its group and its own counts: the ticks of the chart. */
export const listComparedBatches = (
  { workbook: { tables } }: Desk,
  input: z.infer<typeof CompareSeason>,
): readonly ComparedBatch[] =>
  countedBatches(tables, input).map(({ batch, tally, group }) => {
    const counts = stageCountsOf(tally);
    return {
      groupId: group.id,
      batchId: batch.id,
      batch: batch.code,
      counts: RATE_STAGES.flatMap((stage) => {
        const count = counts[stage];
        return count ? [{ stage, ...count }] : [];
      }),
    };
  });
