import { type GroupDifference, groupDifference } from './group-difference.ts';
import { type BatchCount, type GroupRates, ratesOf, solveGroups } from './group-rates.ts';

/** Groups weighed against each other, and the best of them against the second. */
export interface WeighedGroups {
  readonly rates: Pick<GroupRates, 'groups' | 'probabilityBetter'>;
  /** Numbers of the two groups with the highest means, and how far they lie apart; null with fewer than two. */
  readonly lead: { readonly first: number; readonly second: number; readonly difference: GroupDifference } | null;
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
      : { first, second, difference: groupDifference(solved, first, second) };
  return { rates: { groups: rates, probabilityBetter }, lead };
}
