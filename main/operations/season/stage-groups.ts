import type { z } from 'zod';
import type { CompareSeason, WeighedStage } from '../../../shared/contract/season.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import { type StageCount, stageCount } from '../../engine/yield/stage-rate.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { countedBatches } from './counted-batches.ts';

/** Batches of one group that have both counts of a stage. */
export interface StageGroup {
  readonly id: string;
  readonly label: string;
  readonly counts: readonly (StageCount & { readonly batch: Batch })[];
}

/** What one stage came to, group by group, in the order of the batches. */
export function stageGroups(
  tables: Tables,
  input: z.infer<typeof CompareSeason> & { readonly stage: WeighedStage },
): readonly StageGroup[] {
  const counted = countedBatches(tables, input).flatMap(({ batch, tally, group }) => {
    const count = stageCount(tally, input.stage);
    return count ? [{ group, count: { ...count, batch } }] : [];
  });
  return [...Map.groupBy(counted, ({ group }) => group.id)].map(([id, members]) => ({
    id,
    label: members[0]?.group.label ?? '',
    counts: members.map(({ count }) => count),
  }));
}

/** The bare counts, as the model takes them: the same counts, whatever batch they come from, are one question. */
export const bareCounts = (groups: readonly StageGroup[]) =>
  groups.map(({ counts }) => counts.map(({ successes, of }) => ({ successes, of })));
