// The yield engine: is it as sure as it should be, and quick enough to follow a slider? Simulated data sets are drawn with a
// seed, so the figures are the same in every run.
import { fixedFunnel } from '../../main/engine/yield/funnel.ts';
import { type BatchCount, groupRates } from '../../main/engine/yield/group-rates.ts';
import { startReckoning } from '../../main/engine/yield/reckon.ts';
import type { Goal } from './goal.ts';

const DATA_SETS = 60;
const BATCHES = 5;
const LARVAE = 30;
/** "Very likely better" is claimed from here on. */
const CLAIM = 0.95;

interface Setting {
  readonly id: string;
  readonly what: string;
  readonly rates: readonly number[];
  readonly concentration: number;
}

const SETTINGS: readonly Setting[] = [
  { id: 'usual', what: 'batches that differ as usual', rates: [0.65, 0.75, 0.8], concentration: 12 },
  { id: 'wild', what: 'batches that differ wildly', rates: [0.65, 0.75, 0.8], concentration: 6 },
  { id: 'equal', what: 'three groups that are all the same', rates: [0.7, 0.7, 0.7], concentration: 40 },
];

export function goals(): readonly Goal[] {
  return [...SETTINGS.flatMap(calibration), ...manyGroups(), ...quickness(), sliderMove()];
}

/** How often the about-9-in-10 range holds the true rate, and how often a difference is claimed that is not there. */
function calibration({ id, what, rates, concentration }: Setting): readonly Goal[] {
  const random = seeded(20260521);
  let [held, claims, wrong] = [0, 0, 0];
  for (let set = 0; set < DATA_SETS; set += 1) {
    const groups = rates.map((rate) => Array.from({ length: BATCHES }, () => drawBatch(random, rate, concentration)));
    const found = groupRates(groups);
    found.groups.forEach(({ lower, upper }, group) => {
      const truth = rates[group] ?? 0;
      if (lower <= truth && truth <= upper) held += 1;
    });
    found.probabilityBetter.forEach((row, a) => {
      row.forEach((chance, b) => {
        if (a === b || chance <= CLAIM) return;
        claims += 1;
        if ((rates[a] ?? 0) <= (rates[b] ?? 0)) wrong += 1;
      });
    });
  }
  const coverage = held / (DATA_SETS * rates.length);
  const falsely = wrong / DATA_SETS;
  return [
    {
      id: `yield-coverage-${id}`,
      what: `share of true rates inside their range, ${what}, ${DATA_SETS} data sets`,
      value: round(coverage),
      goal: '0.8 to 0.97',
      ok: coverage >= 0.8 && coverage <= 0.97,
    },
    {
      id: `yield-false-claims-${id}`,
      what: `"very likely better" said wrongly, for each data set, ${what} (${claims} claims in all)`,
      value: round(falsely),
      goal: 'at most 0.12',
      ok: falsely <= 0.12,
    },
  ];
}

const MANY = { groups: 12, batchesEach: 40 };
/**
 * The grid of the plan (../shared/domain/statistics.md, 3): spreads within, pairs of mean and spread, and half of its 321
 * rates, since the prototype too summed only where a likelihood counts.
 */
const PLANNED_GRID = { within: 20, priors: 1000, rates: 160 };
/** What the plan's prototype took for 12 groups of 480 batches in all on this kind of machine, in milliseconds. */
const PROTOTYPE = 79;

/**
 * Twelve groups of 480 batches in all, against the plan's prototype. The prototype's figure is brought to this machine by
 * a loop that does its innermost sums and nothing else: one product a rate for each spread, prior and group.
 */
function manyGroups(): readonly Goal[] {
  const random = seeded(480);
  const batchesOf = (larvae: number) =>
    Array.from({ length: MANY.groups }, (_, group) =>
      Array.from({ length: MANY.batchesEach }, () => ({
        of: larvae,
        successes: drawCount(random, larvae, 0.6 + 0.02 * group, 12),
      })),
    );
  const sums = plannedSums();
  return [
    { id: 'yield-groups', grid: 'the usual grid', batches: batchesOf(20) },
    { id: 'yield-groups-fine', grid: 'the finer grid of groups with more than 1,000 larvae', batches: batchesOf(40) },
  ].map(({ id, grid, batches }) => {
    const work = () => groupRates(batches);
    for (let warm = 0; warm < 3; warm += 1) [work(), sums()];
    const rounds = Array.from({ length: 9 }, () => ({ bare: cpu(sums), whole: cpu(work) }));
    const ratio = median(rounds.map(({ bare, whole }) => whole / bare));
    const bare = Math.round(median(rounds.map((round) => round.bare)));
    return {
      id,
      what: `12 groups of 480 batches on ${grid}, against the prototype's sums (${bare} ms here, ${PROTOTYPE} ms for the prototype when the plan was made)`,
      value: round(ratio),
      goal: 'under 3 times',
      ok: ratio < 3,
    };
  });
}

function plannedSums(): () => number {
  const { within, priors, rates } = PLANNED_GRID;
  const likelihoods = Array.from({ length: MANY.groups }, (_, group) => new Float64Array(rates).fill(group + 0.5));
  const prior = new Float64Array(rates).fill(0.1);
  return () => {
    let total = 0;
    for (let cell = 0; cell < within * priors; cell += 1)
      for (const likelihood of likelihoods) {
        let sum = 0;
        for (let rate = 0; rate < rates; rate += 1) sum += (prior[rate] ?? 0) * (likelihood[rate] ?? 0);
        total += sum;
      }
    return total;
  };
}

const STAGES = [
  { rate: 0.72, concentration: 12, mostGoOn: null },
  { rate: 0.93, concentration: 25, mostGoOn: null },
  { rate: 0.88, concentration: 15, mostGoOn: null },
  { rate: 0.75, concentration: 8, mostGoOn: null },
] as const;
const FRAME_MILLISECONDS = 16.7;
const MOVES = 100;
const LARGE = 200;
const DRAWS = 100_000;

function quickness(): readonly Goal[] {
  const moves = () => {
    let sum = 0;
    for (let move = 0; move < MOVES; move += 1) sum += fixedFunnel(30 + (move % 11), STAGES)[10] ?? 0;
    return sum;
  };
  const exact = () => fixedFunnel(LARGE, STAGES);
  const random = seeded(7);
  const draws = () => monteCarlo(random, LARGE);
  for (let warm = 0; warm < 20; warm += 1) [moves(), exact()];
  const perMoves = median(Array.from({ length: 15 }, () => cpu(moves)));
  const ratios = Array.from({ length: 3 }, () => cpu(draws) / (cpu(() => repeat(exact, 50)) / 50));
  const difference = Math.abs(meanOf(monteCarlo(seeded(3), LARGE)) - meanOf(exact()));
  return [
    {
      id: 'yield-what-if',
      what: '100 moves of a slider, in CPU milliseconds (one frame is 16.7)',
      value: round(perMoves),
      goal: `at most ${FRAME_MILLISECONDS}`,
      ok: perMoves <= FRAME_MILLISECONDS,
    },
    {
      id: 'yield-funnel',
      what: `exact chain of ${LARGE} larvae against ${DRAWS} random draws (their means differ by ${difference.toFixed(2)})`,
      value: round(median(ratios)),
      goal: 'at least 1000 times as quick',
      ok: median(ratios) >= 1000 && difference < 1,
    },
  ];
}

/** One move of a slider as the window asks it: the whole plan anew, in the thread of the rates; what is believed is kept. */
function sliderMove(): Goal {
  const answer = startReckoning();
  const random = seeded(5);
  const groups = [0.7, 0.75].map((rate) => Array.from({ length: 10 }, () => drawBatch(random, rate, 12)));
  const stage = (whatIf: number | null) => ({ groups, group: 0, whatIf });
  const move = (mating: number) =>
    answer('plan', {
      ...{ wanted: 10, chance: 0.9, batches: 1, cellsPerBuilder: 45, boxes: null, larvaeEach: null },
      stages: [stage(null), stage(null), stage(null), stage(mating)],
    });
  move(0.6);
  const times = Array.from({ length: MOVES }, (_, at) => cpu(() => move(0.6 + at / 400)));
  return {
    id: 'yield-slider',
    what: 'one move of a slider as the window asks it: larvae, boxes, other rows and losses, in CPU milliseconds',
    value: round(median(times)),
    goal: `at most ${FRAME_MILLISECONDS}, in a thread of its own`,
    ok: median(times) <= FRAME_MILLISECONDS,
  };
}

const meanOf = (chances: Float64Array): number => chances.reduce((sum, chance, k) => sum + k * chance, 0);

function monteCarlo(random: () => number, given: number): Float64Array {
  const chances = new Float64Array(given + 1);
  for (let draw = 0; draw < DRAWS; draw += 1) {
    let left = given;
    for (const { rate, concentration } of STAGES) left = drawCount(random, left, rate, concentration);
    chances[left] = (chances[left] ?? 0) + 1 / DRAWS;
  }
  return chances;
}

const drawBatch = (random: () => number, rate: number, concentration: number): BatchCount => ({
  of: LARVAE,
  successes: drawCount(random, LARVAE, rate, concentration),
});

function drawCount(random: () => number, n: number, rate: number, concentration: number): number {
  const a = drawGamma(random, rate * concentration);
  const own = a / (a + drawGamma(random, (1 - rate) * concentration));
  let count = 0;
  for (let trial = 0; trial < n; trial += 1) if (random() < own) count += 1;
  return count;
}

/** Marsaglia & Tsang 2000, ACM Trans. Math. Softw. 26:363; shapes below 1 by the usual power. */
function drawGamma(random: () => number, shape: number): number {
  if (shape < 1) return drawGamma(random, shape + 1) * random() ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const normal = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const v = (1 + c * normal) ** 3;
    if (v > 0 && Math.log(1 - random()) < 0.5 * normal * normal + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** Mulberry32, a small generator with a seed: the same draws in every run. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function cpu(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function repeat(work: () => unknown, times: number): void {
  for (let time = 0; time < times; time += 1) work();
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
const round = (value: number): number => Math.round(1000 * value) / 1000;
