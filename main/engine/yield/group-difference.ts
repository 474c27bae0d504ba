import { cumulativeAtMiddle, posterior, type SolvedGroups } from './group-rates.ts';
import type { RateGrid } from './rate-grid.ts';

/** How far one group's rate lies above another's, as shares (0.12 = 12 more of 100). */
export interface GroupDifference {
  readonly mean: number;
  /** About 9 times in 10 the difference lies between these. */
  readonly lower: number;
  readonly upper: number;
  /** Probability that it is smaller than WORTH_ACTING_ON either way. */
  readonly probabilityNoMatter: number;
}

/** A difference of 5 of 100 is worth acting on: a judgement of this house. */
export const WORTH_ACTING_ON = 0.05;
/** From this probability on it is said that no difference matters. */
export const SURE_NO_MATTER = 0.8;

/** Differences at which the distribution is reckoned: every 2 of 100 from -100 to 100. */
const GAPS = Float64Array.from({ length: 101 }, (_, index) => (index - 50) / 50);

/**
 * The difference of two groups' true rates in the model of groupRates. Within each cell of the grid the groups are
 * independent, so P(a - b <= gap) is a sum over a's nodes of how likely b lies above (rate - gap); cells are then averaged.
 */
export function groupDifference({ grid, likelihoods, cells }: SolvedGroups, a: number, b: number): GroupDifference {
  const asked = [...GAPS, -WORTH_ACTING_ON, WORTH_ACTING_ON].map((gap) => placesBelow(grid, gap));
  const below = new Float64Array(asked.length);
  let mean = 0;
  for (const { prior, within, weight, integrals } of cells) {
    const byGroup = likelihoods[within]?.byGroup;
    const [one, other] = [byGroup?.[a], byGroup?.[b]];
    if (!one || !other) continue;
    const own = posterior(prior.density, one, integrals[a] ?? 1);
    const others = posterior(prior.density, other, integrals[b] ?? 1);
    const cumulative = cumulativeAtMiddle(others);
    mean += weight * (meanOn(grid, own) - meanOn(grid, others));
    asked.forEach((places, at) => {
      below[at] = (below[at] ?? 0) + weight * chanceBelow(own, cumulative, places);
    });
  }
  const chances = below.slice(0, GAPS.length);
  return {
    mean,
    lower: gapAt(chances, 0.05),
    upper: gapAt(chances, 0.95),
    probabilityNoMatter: Math.max(0, (below[asked.length - 1] ?? 0) - (below[asked.length - 2] ?? 0)),
  };
}

const meanOn = (grid: RateGrid, density: Float64Array): number =>
  density.reduce((sum, share, node) => sum + share * (grid.rates[node] ?? 0), 0);

/** Where on the grid (rate - gap) lies for every node: a lower node and the part on the way to the next. */
interface Places {
  readonly nodes: Int32Array;
  readonly parts: Float64Array;
}

function placesBelow({ rates, logits }: RateGrid, gap: number): Places {
  const first = logits[0] ?? 0;
  const step = (logits[1] ?? 1) - first;
  const last = logits.length - 1;
  const nodes = new Int32Array(rates.length);
  const parts = new Float64Array(rates.length);
  rates.forEach((own, node) => {
    const rate = own - gap;
    const place = rate <= 0 ? -1 : rate >= 1 ? last : (Math.log(rate / (1 - rate)) - first) / step;
    // Below the grid nothing lies, above it everything.
    nodes[node] = Math.min(Math.max(Math.floor(place), -1), last);
    parts[node] = place <= -1 || place >= last ? 0 : place - Math.floor(place);
  });
  return { nodes, parts };
}

/** P(own - other <= gap): the other lies at or above (own - gap). `cumulative` is linear in the logit between nodes. */
function chanceBelow(own: Float64Array, cumulative: Float64Array, { nodes, parts }: Places): number {
  let sum = 0;
  for (let node = 0; node < own.length; node += 1) {
    const share = own[node] ?? 0;
    if (share < 1e-9) continue;
    const at = nodes[node] ?? 0;
    const part = parts[node] ?? 0;
    const low = at < 0 ? 0 : at >= own.length - 1 ? 1 : (cumulative[at] ?? 0);
    const high = at >= own.length - 2 ? 1 : (cumulative[at + 1] ?? 1);
    sum += share * (1 - (1 - part) * low - part * high);
  }
  return sum;
}

function gapAt(chances: Float64Array, probability: number): number {
  const at = chances.findIndex((chance) => chance >= probability);
  if (at <= 0) return GAPS[Math.max(0, at)] ?? 1;
  const [low, high] = [chances[at - 1] ?? 0, chances[at] ?? 1];
  const part = high === low ? 0 : (probability - low) / (high - low);
  return (GAPS[at - 1] ?? 0) + part * ((GAPS[at] ?? 0) - (GAPS[at - 1] ?? 0));
}
