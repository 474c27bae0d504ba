import type { z } from 'zod';
import type { CompareStage, StageComparison, WeighedGroup } from '../../../shared/contract/season.ts';
import { certaintyWord, isNamedBest } from '../../engine/yield/certainty.ts';
import { groupRates } from '../../engine/yield/group-rates.ts';
import { stageCount } from '../../engine/yield/stage-rate.ts';
import type { Desk } from '../operation.ts';
import { countedBatches } from './counted-batches.ts';

/** One stage weighed group against group, allowing for how much batches differ and for how few there are. */
export function compareStage({ workbook: { tables } }: Desk, input: z.infer<typeof CompareStage>): StageComparison {
  const counted = countedBatches(tables, input).flatMap((one) => {
    const count = stageCount(one.tally, input.stage);
    return count ? [{ group: one.group, count }] : [];
  });
  const groups = [...Map.groupBy(counted, (one) => one.group.id).values()];
  if (groups.length === 0) return { stage: input.stage, groups: [], lead: null };
  const rates = groupRates(groups.map((group) => group.map((one) => one.count)));
  const weighed = groups.map((group, index): WeighedGroup & { readonly index: number } => {
    const rate = rates.groups[index];
    return {
      index,
      groupId: group[0]?.group.id ?? '',
      label: group[0]?.group.label ?? '',
      batches: group.length,
      mean: rate?.mean ?? 0,
      lower: rate?.lower ?? 0,
      upper: rate?.upper ?? 1,
      probabilityBest: rate?.probabilityBest ?? 0,
    };
  });
  const ranked = weighed.toSorted((a, b) => b.mean - a.mean);
  const [first, second] = ranked;
  const probability = first && second ? (rates.probabilityBetter[first.index]?.[second.index] ?? 0.5) : 0;
  return {
    stage: input.stage,
    groups: ranked.map(({ index: _index, ...group }) => group),
    lead:
      first && second
        ? {
            better: first.groupId,
            other: second.groupId,
            probability,
            certainty: certaintyWord(probability),
            isBest: isNamedBest(first.probabilityBest, first.batches),
          }
        : null,
  };
}
