import { type BatchCount, groupRates } from './group-rates.ts';

/** From this probability on one of two is called very likely better. */
export const SETTLED = 0.95;
/** The most further batches each that are worth proposing. */
export const MOST_MORE = 10;

/**
 * How many more batches of each of two groups would settle which is better, if both go on at the rates they seem to have:
 * the model is weighed anew with 1 to 10 further batches of the usual size. null = more than 10 each.
 */
export function moreBatchesToSettle(
  groups: readonly (readonly BatchCount[])[],
  first: number,
  second: number,
): number | null {
  const rates = groupRates(groups);
  const sizes = groups.flat().map(({ of }) => of);
  const size = Math.max(1, Math.round(sizes.reduce((sum, of) => sum + of, 0) / Math.max(1, sizes.length)));
  const more = (group: number): BatchCount => ({
    of: size,
    successes: Math.round(size * (rates.groups[group]?.mean ?? 0.5)),
  });
  for (let count = 1; count <= MOST_MORE; count += 1) {
    const grown = groups.map((batches, group) =>
      group === first || group === second ? [...batches, ...Array.from({ length: count }, () => more(group))] : batches,
    );
    if ((groupRates(grown).probabilityBetter[first]?.[second] ?? 0) >= SETTLED) return count;
  }
  return null;
}
