import type { BatchCount } from './group-rates.ts';
import { concentrationOf, type RateGrid, spreadNodes } from './rate-grid.ts';

/** For one spread within groups: how likely each group's counts are at each rate, scaled to at most 1 over all spreads. */
export interface GroupLikelihood {
  readonly spread: number;
  readonly byGroup: readonly Float64Array[];
}

/**
 * Beta-binomial likelihoods without gamma functions. Counts are whole, so a batch's log likelihood is a sum of logs
 * log(a + j), and a group's is each of those logs times how often its batches meet it: as quick for forty batches as for
 * one. The grid's rates lie evenly about one half, so the logs of misses are those of hits read from the other end.
 */
export function batchLikelihoods(
  grid: RateGrid,
  groups: readonly (readonly BatchCount[])[],
): readonly GroupLikelihood[] {
  const most = Math.max(0, ...groups.flatMap((batches) => batches.map((batch) => batch.of)));
  const meetings = groups.map((batches) => meetingsOf(batches, most));
  const logs = spreadNodes().map((spread) => ({
    spread,
    byGroup: logLikelihoods(grid, meetings, concentrationOf(spread), most),
  }));
  const scale = groups.map((_, group) =>
    Math.max(...logs.map(({ byGroup }) => byGroup[group]?.reduce((most, log) => Math.max(most, log), -Infinity) ?? 0)),
  );
  return logs.map(({ spread, byGroup }) => ({
    spread,
    byGroup: byGroup.map((values, group) => values.map((log) => Math.exp(log - (scale[group] ?? 0)))),
  }));
}

/** [j]: in how many of a group's batches the hits, the misses, and all that were offered, number more than j. */
interface Meetings {
  readonly hits: Float64Array;
  readonly misses: Float64Array;
  readonly offered: Float64Array;
}

function meetingsOf(batches: readonly BatchCount[], most: number): Meetings {
  const above = (count: (batch: BatchCount) => number) =>
    Float64Array.from({ length: most }, (_, j) => batches.filter((batch) => count(batch) > j).length);
  return {
    hits: above(({ successes }) => successes),
    misses: above(({ successes, of }) => of - successes),
    offered: above(({ of }) => of),
  };
}

function logLikelihoods(
  { rates }: RateGrid,
  meetings: readonly Meetings[],
  concentration: number,
  most: number,
): readonly Float64Array[] {
  const offered = new Float64Array(most);
  fillLogs(offered, 0, concentration, most);
  const hits = new Float64Array(rates.length * most);
  for (let node = 0; node < rates.length; node += 1)
    fillLogs(hits, node * most, (rates[node] ?? 0) * concentration, most);
  const last = rates.length - 1;
  return meetings.map((met) => {
    const always = sumOf(met.offered, offered, 0);
    const logs = new Float64Array(rates.length);
    for (let node = 0; node <= last; node += 1)
      logs[node] = sumOf(met.hits, hits, node * most) + sumOf(met.misses, hits, (last - node) * most) - always;
    return logs;
  });
}

/** log(start), log(start + 1), ... over `most` terms, from a place in an array on. */
function fillLogs(into: Float64Array, from: number, start: number, most: number): void {
  for (let j = 0; j < most; j += 1) into[from + j] = Math.log(start + j);
}

function sumOf(times: Float64Array, logs: Float64Array, from: number): number {
  let sum = 0;
  for (let j = 0; j < times.length; j += 1) sum += (times[j] ?? 0) * (logs[from + j] ?? 0);
  return sum;
}
