import { batchSwing, betaBinomialFit } from './beta-binomial-fit.ts';
import { type GroupDifference, groupDifference } from './group-difference.ts';
import { type BatchCount, type GroupRates, ratesOf, solveGroups } from './group-rates.ts';

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
  } | null;
}

/** What is said about one stage: rates of all groups, and the difference between the leading two. */
export function weighGroups(groups: readonly (readonly BatchCount[])[]): WeighedGroups {
  const solved = solveGroups(groups);
  const { groups: rates, probabilityBetter } = ratesOf(solved);
  const [first, second] = rates
    .map(({ mean }, group) => ({ mean, group }))
    .toSorted((a, b) => b.mean - a.mean)
    .map(({ group }) => group);
  const lead =
    first === undefined || second === undefined
      ? null
      : { first, second, difference: groupDifference(solved, first, second), swing: swingOf(groups[first] ?? []) };
  return { rates: { groups: rates, probabilityBetter }, lead };
}

/** Fewer batches say nothing about how they differ. */
const FEWEST_FOR_SWING = 4;

function swingOf(batches: readonly BatchCount[]): number | null {
  const used = batches.filter(({ of }) => of > 0);
  const fit = used.length < FEWEST_FOR_SWING ? null : betaBinomialFit(used);
  return fit && batchSwing(fit);
}
