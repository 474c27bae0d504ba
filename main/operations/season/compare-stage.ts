import type { z } from 'zod';
import type {
  AllowedComparison,
  CompareStage,
  StageComparison,
  WeighedGroup,
} from '../../../shared/contract/season.ts';
import { certaintyWord, isNamedBest } from '../../engine/yield/certainty.ts';
import { SURE_NO_MATTER } from '../../engine/yield/group-difference.ts';
import type { WeighedGroups } from '../../engine/yield/weigh-groups.ts';
import type { Desk } from '../operation.ts';
import { levelOf } from './counted-batches.ts';
import { bareCounts, type StageGroup, stageGroups } from './stage-groups.ts';

/** One stage weighed group against group, allowing for how much batches differ and for how few there are. */
export async function compareStage(desk: Desk, input: z.infer<typeof CompareStage>): Promise<StageComparison> {
  const groups = stageGroups(desk.workbook.tables, input);
  if (groups.length === 0) return { stage: input.stage, groups: [], lead: null };
  const weighed = await desk.reckon('weigh', { groups: bareCounts(groups), ahead: input.ahead });
  const allowing = await allowedFor(desk, input, groups, weighed);
  return {
    stage: input.stage,
    groups: groups
      .map((group, index): WeighedGroup => {
        const { mean = 0, lower = 0, upper = 1, probabilityBest = 0 } = weighed.rates.groups[index] ?? {};
        return {
          groupId: group.id,
          label: group.label,
          batches: group.counts.length,
          mean,
          lower,
          upper,
          probabilityBest,
        };
      })
      .toSorted((a, b) => b.mean - a.mean),
    lead: leadOf(groups, weighed, allowing, input.ahead),
  };
}

function leadOf(
  groups: readonly StageGroup[],
  { rates, lead }: WeighedGroups,
  allowing: AllowedComparison | null,
  batches: number,
): StageComparison['lead'] {
  const [better, other] = lead ? [groups[lead.first], groups[lead.second]] : [];
  if (!lead || !better || !other) return null;
  const probability = rates.probabilityBetter[lead.first]?.[lead.second] ?? 0.5;
  const { mean, lower, upper, probabilityNoMatter } = lead.difference;
  return {
    better: better.id,
    other: other.id,
    probability,
    certainty: certaintyWord(probability),
    isBest: isNamedBest(rates.groups[lead.first]?.probabilityBest ?? 0, better.counts.length),
    difference: { mean, lower, upper },
    noMatter: probabilityNoMatter > SURE_NO_MATTER,
    swing: lead.swing,
    next: { batches, ...lead.next },
    allowing:
      allowing?.kind === 'weighed' ? { ...allowing, disagrees: disagrees(allowing, better.id, probability) } : allowing,
  };
}

/** From this probability on a comparison is taken seriously enough to contradict another. */
const FAIRLY_SURE = 0.8;

const disagrees = (
  allowed: Extract<AllowedComparison, { readonly kind: 'weighed' }>,
  better: string,
  probability: number,
): boolean => allowed.better !== better && Math.max(allowed.probability, probability) > FAIRLY_SURE;

async function allowedFor(
  { workbook: { tables }, reckon }: Desk,
  { allowingFor: factor }: z.infer<typeof CompareStage>,
  groups: readonly StageGroup[],
  { lead }: WeighedGroups,
): Promise<AllowedComparison | null> {
  const [first, second] = lead ? [groups[lead.first], groups[lead.second]] : [];
  if (factor === null || !lead || !first || !second) return null;
  const counted = groups.flatMap((group, level) =>
    group.counts.map((count) => ({ ...count, level, other: levelOf(tables, count.batch, factor) })),
  );
  const others = [...new Set(counted.map(({ other }) => other))];
  const allowed = await reckon('allow', {
    batches: counted.map(({ successes, of, level, other }) => ({
      successes,
      of,
      levels: [level, others.indexOf(other)],
    })),
    levels: [groups.length, others.length],
    first: lead.first,
    second: lead.second,
  });
  if (allowed.kind !== 'weighed') return { kind: allowed.kind, factor };
  const probability = Math.max(allowed.probability, 1 - allowed.probability);
  return {
    kind: 'weighed',
    factor,
    better: allowed.probability >= 0.5 ? first.id : second.id,
    probability,
    certainty: certaintyWord(probability),
    disagrees: false,
  };
}
