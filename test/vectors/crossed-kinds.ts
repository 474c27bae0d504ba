import { type CrossedBatch, crossedMode } from '../../main/engine/yield/crossed-mode.ts';
import { crossedRates } from '../../main/engine/yield/crossed-rates.ts';
import { compareNumber } from './compare-number.ts';
import type { Failure, KindTable, Vector } from './vector.ts';

interface CrossedInput {
  readonly n: readonly number[];
  readonly x: readonly number[];
  readonly method: readonly number[];
  readonly builder: readonly number[];
}

const batchesOf = ({ n, x, method, builder }: CrossedInput): readonly CrossedBatch[] =>
  n.map((of, at) => ({
    of,
    successes: x[at] ?? 0,
    levels: [(method[at] ?? 1) - 1, (builder[at] ?? 1) - 1],
  }));

const levelsOf = ({ method, builder }: CrossedInput): readonly [number, number] => [
  Math.max(...method),
  Math.max(...builder),
];

function checkFixed({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { sigma, ...counts } = input as CrossedInput & { sigma: Record<string, number> };
  const want = expected as Record<string, number> & {
    mode_method: readonly number[];
    mode_builder: readonly number[];
    sd_method: readonly number[];
  };
  const levels = levelsOf(counts);
  const got = crossedMode(batchesOf(counts), levels, {
    intercept: sigma.intercept ?? 0,
    factors: [sigma.method ?? 0, sigma.builder ?? 0],
    batch: sigma.batch ?? 0,
  });
  const variance = (at: number) => got.covariance[at]?.[at] ?? Number.NaN;
  const near = (what: string, value: number | undefined, wanted: number | undefined) =>
    compareNumber(what, value, wanted ?? Number.NaN, tolerance);
  return [
    ...near('intercept', got.effects[0], want.mode_intercept),
    ...want.mode_method.flatMap((mode, at) => near(`method ${at}`, got.effects[1 + at], mode)),
    ...want.mode_builder.flatMap((mode, at) => near(`builder ${at}`, got.effects[1 + levels[0] + at], mode)),
    ...near('sd of the intercept', Math.sqrt(variance(0)), want.sd_intercept),
    ...want.sd_method.flatMap((sd, at) => near(`sd of method ${at}`, Math.sqrt(variance(1 + at)), sd)),
    ...near('difference', (got.effects[1] ?? 0) - (got.effects[2] ?? 0), want.diff_method_1_2),
    ...near(
      'sd of the difference',
      Math.sqrt(variance(1) + variance(2) - 2 * (got.covariance[1]?.[2] ?? 0)),
      want.sd_diff_method_1_2,
    ),
    ...near('log evidence', got.logEvidence, want.log_evidence),
  ];
}

function checkNested(vector: Vector): readonly Failure[] {
  const input = vector.input as CrossedInput;
  const want = vector.expected as {
    prob_method_pair: readonly (readonly number[])[];
    mean_diff_1_2: number;
    sd_diff_1_2: number;
    mean_diff_1_3: number;
    E_sigma: { method: number; builder: number; batch: number };
  };
  const { same_grid: tolerance } = vector.tolerance as unknown as { same_grid: number };
  const got = crossedRates(batchesOf(input), levelsOf(input));
  const near = (what: string, value: number | undefined, wanted: number) =>
    compareNumber(what, value, wanted, tolerance);
  return [
    ...want.prob_method_pair.flatMap((row, a) =>
      row.flatMap((chance, b) => near(`${a} better than ${b}`, got.probabilityBetter[a]?.[b], chance)),
    ),
    ...near('difference of the first two', got.difference(0, 1).mean, want.mean_diff_1_2),
    ...near('its deviation', got.difference(0, 1).deviation, want.sd_diff_1_2),
    ...near('difference of first and third', got.difference(0, 2).mean, want.mean_diff_1_3),
    ...[want.E_sigma.method, want.E_sigma.builder, want.E_sigma.batch].flatMap((sigma, at) =>
      near(`spread ${at}`, got.spreads[at], sigma),
    ),
  ];
}

export const crossedKinds: KindTable = { glmm_fixed_sigma: checkFixed, glmm_nested: checkNested };
