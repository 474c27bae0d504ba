import { batchSwing, betaBinomialFit } from './beta-binomial-fit.ts';
import { summariseCount } from './count-summary.ts';
import { type GroupDifference, groupDifference } from './group-difference.ts';
import { type BatchCount, type GroupRates, ratesOf, solveGroups } from './group-rates.ts';
import { nextBatches } from './next-batch.ts';
import { nodesOfJoint } from './rate-nodes.ts';

/** Groups weighed against each other, and the best of them against the second. */
export interface WeighedGroups {
  readonly rates: Pick<GroupRates, 'groups' | 'probabilityBetter'>;
  /** Numbers of the two groups with the highest means, and how far they lie apart; null with fewer than two. */
  readonly lead: {
    readonly first: number;
    readonly second: number;
    readonly difference: GroupDifference;
    /** How far single batches of the first lie from its mean, as a share; 0 = no sign that they differ, null = too few. */
    readonly swing: number | null;
    /** Of the next batches of the first, each of its usual size, taken together: 9 times in 10 between these. */
    readonly next: { readonly of: number; readonly lower: number; readonly upper: number };
  } | null;
}

/**
 * What is said about one stage: rates of all groups, and the difference between the leading two.
 * @param ahead how many next batches are asked about.
 */
export function weighGroups(groups: readonly (readonly BatchCount[])[], ahead = 1): WeighedGroups {
  const solved = solveGroups(groups);
  const { groups: rates, probabilityBetter, jointByGroup } = ratesOf(solved);
  const [first, second] = rates
    .map(({ mean }, group) => ({ mean, group }))
    .toSorted((a, b) => b.mean - a.mean)
    .map(({ group }) => group);
  const lead =
    first === undefined || second === undefined
      ? null
      : {
          first,
          second,
          difference: groupDifference(solved, first, second),
          swing: swingOf(groups[first] ?? []),
          next: nextOf(jointByGroup[first] ?? [], groups[first] ?? [], ahead),
        };
  return { rates: { groups: rates, probabilityBetter }, lead };
}

/** Fewer batches say nothing about how they differ. */
const FEWEST_FOR_SWING = 4;

function swingOf(batches: readonly BatchCount[]): number | null {
  const used = batches.filter(({ of }) => of > 0);
  const fit = used.length < FEWEST_FOR_SWING ? null : betaBinomialFit(used);
  return fit && batchSwing(fit);
}

function nextOf(joint: readonly Float64Array[], batches: readonly BatchCount[], ahead: number) {
  const total = batches.reduce((sum, { of }) => sum + of, 0);
  const of = Math.max(1, Math.round(total / Math.max(1, batches.length)));
  const { q05, q95 } = summariseCount(nextBatches(nodesOfJoint(joint), of, ahead));
  return { of: of * ahead, lower: q05, upper: q95 };
}
