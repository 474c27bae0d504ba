// What comes out of so many larvae, how many are needed, where they are lost: each by the function the planner uses.
import { chanceOfAtLeast, summariseCount } from '../../main/engine/yield/count-summary.ts';
import { type FunnelStage, funnel, funnelSum, stageTable } from '../../main/engine/yield/funnel.ts';
import { boxesNeeded, larvaeNeeded } from '../../main/engine/yield/how-many.ts';
import { nextBatches } from '../../main/engine/yield/next-batch.ts';
import { nodesOfFixed } from '../../main/engine/yield/rate-nodes.ts';
import { sharedFunnel } from '../../main/engine/yield/shared-funnel.ts';
import { COUNT_STAGES, type CountStage, checkStageCounts, usablePairs } from '../../main/engine/yield/stage-counts.ts';
import { stageLosses } from '../../main/engine/yield/stage-losses.ts';
import { nodesOfBeta } from '../builders/beta-nodes.ts';
import { compareNumber } from './compare-number.ts';
import type { Failure, KindTable, Vector } from './vector.ts';

interface KnownStage {
  readonly stage: string;
  readonly mean: number;
  readonly concentration: number;
}

interface BelievedStage {
  readonly rate_posterior_a: number;
  readonly rate_posterior_b: number;
  readonly concentration: number;
}

type Caps = Readonly<Record<string, number | null>>;

interface ExpectedCount {
  readonly mean: number;
  readonly variance: number;
  readonly p_zero: number;
  readonly k: readonly number[];
  readonly prob_at_least: readonly number[];
  readonly sure90: number;
  readonly q50: number;
  readonly q95: number;
}

interface Tolerances {
  readonly mean: number;
  readonly variance: number;
  readonly chance: number;
  readonly count: number;
}

const even = (tolerance: number): Tolerances => ({ mean: tolerance, variance: tolerance, chance: tolerance, count: 0 });

const knownStages = (stages: readonly KnownStage[], caps: Caps, most: number): readonly FunnelStage[] =>
  stages.map(({ stage, mean, concentration }) => ({
    table: stageTable(nodesOfFixed(mean, concentration), most),
    mostGoOn: caps[stage] ?? null,
  }));

const believed = ({ rate_posterior_a: a, rate_posterior_b: b, concentration }: BelievedStage) =>
  nodesOfBeta(a, b, concentration);

function compareCount(chances: Float64Array, want: ExpectedCount, tolerance: Tolerances): readonly Failure[] {
  const got = summariseCount(chances);
  return [
    ...compareNumber('mean', got.mean, want.mean, tolerance.mean),
    ...compareNumber('variance', got.variance, want.variance, tolerance.variance),
    ...compareNumber('chance of none', got.chanceOfNone, want.p_zero, tolerance.chance),
    ...want.k.flatMap((count, index) =>
      compareNumber(
        `chance of at least ${count}`,
        chanceOfAtLeast(chances, count),
        want.prob_at_least[index] ?? Number.NaN,
        tolerance.chance,
      ),
    ),
    ...compareNumber('nine times in ten at least', got.sure90, want.sure90, tolerance.count),
    ...compareNumber('median', got.q50, want.q50, tolerance.count),
    ...compareNumber('95th hundredth', got.q95, want.q95, tolerance.count),
  ];
}

function checkFunnel({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { offered, stages, caps } = input as { offered: number; stages: readonly KnownStage[]; caps: Caps };
  return compareCount(funnel(offered, knownStages(stages, caps, offered)), expected as ExpectedCount, even(tolerance));
}

function checkFunnelSum({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { offered, stages, boxes_shared } = input as {
    offered: readonly number[];
    stages: readonly KnownStage[];
    boxes_shared: number | null;
  };
  const most = offered.reduce((sum, n) => sum + n, 0);
  return compareCount(
    funnelSum(offered, knownStages(stages, {}, most), boxes_shared),
    expected as ExpectedCount,
    even(tolerance),
  );
}

/** One batch exactly; several that share their rates by the fixed points, to the tolerances the vector itself names. */
function checkUncertainFunnel(vector: Vector): readonly Failure[] {
  const { offered, batches, stages } = vector.input as {
    offered: number;
    batches: number;
    stages: readonly BelievedStage[];
  };
  const want = vector.expected as ExpectedCount;
  const nodes = stages.map(believed);
  if (batches === 1) {
    const exact = nodes.map((of) => ({ table: stageTable(of, offered), mostGoOn: null }));
    return compareCount(funnel(offered, exact), want, even(vector.tolerance ?? 0));
  }
  const { prob, mean, quantiles } = vector.tolerance as unknown as { prob: number; mean: number; quantiles: number };
  return compareCount(
    sharedFunnel(
      Array.from({ length: batches }, () => offered),
      nodes.map((of) => ({ nodes: of, mostGoOn: null })),
    ),
    want,
    { mean, variance: 0.02 * want.variance, chance: prob, count: quantiles },
  );
}

function checkNextBatches({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { n, batches, ...stage } = input as BelievedStage & { n: number; batches: number };
  return compareCount(nextBatches(believed(stage), n, batches), expected as ExpectedCount, even(tolerance));
}

function checkLarvae({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { k, prob, stages, caps, n_max } = input as {
    k: number;
    prob: number;
    stages: readonly KnownStage[];
    caps: Caps;
    n_max: number;
  };
  const want = expected as { n: number | null; prob_at_n: number; prob_at_n_minus_1: number };
  const got = larvaeNeeded(k, prob, knownStages(stages, caps, n_max), n_max);
  if (want.n === null) return got.kind === 'notReachable' ? [] : [`${got.larvae} larvae, expected not reachable`];
  if (got.kind === 'notReachable') return [`not reachable, expected ${want.n} larvae`];
  return [
    ...compareNumber('larvae', got.larvae, want.n, 0),
    ...compareNumber('chance', got.chance, want.prob_at_n, tolerance),
    ...compareNumber('chance of one fewer', got.chanceOfOneFewer, want.prob_at_n_minus_1, tolerance),
  ];
}

function checkBoxes({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { k, prob, mean, concentration } = input as { k: number; prob: number; mean: number; concentration: number };
  const want = (expected as { boxes: number }).boxes;
  const got = boxesNeeded(k, prob, stageTable(nodesOfFixed(mean, concentration), 2 * want + 10));
  return compareNumber('boxes', got ?? undefined, want, tolerance);
}

function checkLosses({ input, expected, tolerance }: Vector): readonly Failure[] {
  const { stages } = input as { stages: readonly BelievedStage[] };
  const want = expected as {
    loss_per_100_offered: readonly number[];
    laying_per_100_offered: number;
    prob_largest_loser: readonly number[];
  };
  const { loss, prob } = tolerance as unknown as { loss: number; prob: number };
  const got = stageLosses(stages.map(believed));
  return [
    ...compareNumber('laying of 100', got.layingPer100, want.laying_per_100_offered, loss),
    ...want.loss_per_100_offered.flatMap((lost, stage) =>
      compareNumber(`lost at stage ${stage}`, got.stages[stage]?.expected, lost, loss),
    ),
    ...want.prob_largest_loser.flatMap((chance, stage) =>
      compareNumber(`largest at stage ${stage}`, got.stages[stage]?.probabilityLargest, chance, prob),
    ),
  ];
}

/** The vectors' words for the stages, beside ours. */
const STAGE_OF: Readonly<Record<string, CountStage>> = {
  offered: 'given',
  started: 'taken',
  sealed: 'sealed',
  emerged: 'emerged',
  laying: 'laying',
};
const WORD_OF = Object.fromEntries(Object.entries(STAGE_OF).map(([word, stage]) => [stage, word]));

/** Counts by our stages; a text such as "NaN" is what a form hands over for something that is no number. */
const countsOf = (input: unknown): Readonly<Partial<Record<CountStage, number | null>>> =>
  Object.fromEntries(
    Object.entries(input as Readonly<Record<string, number | string | null>>).map(([word, cells]) => [
      STAGE_OF[word],
      typeof cells === 'string' ? Number(cells) : cells,
    ]),
  );

function checkInputError({ input, expected }: Vector): readonly Failure[] {
  const refused = checkStageCounts(countsOf(input)).length > 0;
  return refused === (expected as { error: boolean }).error ? [] : [`refused: ${refused}`];
}

function checkPairs({ input, expected }: Vector): readonly Failure[] {
  const want = (expected as { pairs: readonly { stage: string; n: number; x: number }[] }).pairs;
  const got = usablePairs(countsOf(input)).map(({ stage, of, successes }) => ({
    stage: WORD_OF[stage],
    n: of,
    x: successes,
  }));
  if (COUNT_STAGES.length !== Object.keys(STAGE_OF).length) return ['a stage has no word in the vectors'];
  return JSON.stringify(got) === JSON.stringify(want) ? [] : [`pairs are ${JSON.stringify(got)}`];
}

export const forecastKinds: KindTable = {
  funnel: checkFunnel,
  funnel_sum: checkFunnelSum,
  funnel_uncertain: checkUncertainFunnel,
  predict_uncertain: checkNextBatches,
  inverse_offered: checkLarvae,
  inverse_boxes: checkBoxes,
  stage_loss: checkLosses,
  input_error: checkInputError,
  usable_pairs: checkPairs,
};
