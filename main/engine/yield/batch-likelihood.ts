import type { BatchCount } from './group-rates.ts';
import { concentrationOf, type RateGrid, spreadNodes } from './rate-grid.ts';

/** For one spread within groups: how likely each group's counts are at each rate, scaled to at most 1 over all spreads. */
export interface GroupLikelihood {
  readonly spread: number;
  readonly byGroup: readonly Float64Array[];
}

/**
 * Beta-binomial likelihoods by running sums of logs: counts are whole, so three look-ups a batch take the place of gamma
 * functions.
 */
export function batchLikelihoods(
  grid: RateGrid,
  groups: readonly (readonly BatchCount[])[],
): readonly GroupLikelihood[] {
  const logs = spreadNodes().map((spread) => ({
    spread,
    byGroup: logLikelihoods(grid, groups, concentrationOf(spread)),
  }));
  const scale = groups.map((_, group) =>
    Math.max(...logs.map(({ byGroup }) => byGroup[group]?.reduce((most, log) => Math.max(most, log), -Infinity) ?? 0)),
  );
  return logs.map(({ spread, byGroup }) => ({
    spread,
    byGroup: byGroup.map((values, group) => values.map((log) => Math.exp(log - (scale[group] ?? 0)))),
  }));
}

function logLikelihoods(
  grid: RateGrid,
  groups: readonly (readonly BatchCount[])[],
  concentration: number,
): readonly Float64Array[] {
  const most = Math.max(0, ...groups.flatMap((batches) => batches.map((batch) => batch.of)));
  const all = runningLogs(concentration, most);
  const result = groups.map(() => new Float64Array(grid.rates.length));
  grid.rates.forEach((rate, node) => {
    const hits = runningLogs(rate * concentration, most);
    const misses = runningLogs((1 - rate) * concentration, most);
    groups.forEach((batches, group) => {
      let log = 0;
      for (const { successes, of } of batches)
        log += (hits[successes] ?? 0) + (misses[of - successes] ?? 0) - (all[of] ?? 0);
      const row = result[group];
      if (row) row[node] = log;
    });
  });
  return result;
}

/** [j] = log(start) + log(start + 1) + ... over j terms. */
function runningLogs(start: number, most: number): Float64Array {
  const sums = new Float64Array(most + 1);
  for (let j = 0; j < most; j += 1) sums[j + 1] = (sums[j] ?? 0) + Math.log(start + j);
  return sums;
}
