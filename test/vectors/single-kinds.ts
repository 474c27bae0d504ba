// Single counts, and groups at two levels: each by the function the window uses.

import { afterCount, deviationOf, meanOf, probabilityGreater } from '../../main/engine/yield/beta-belief.ts';
import { betaBinomialFit, betaMoments } from '../../main/engine/yield/beta-binomial-fit.ts';
import type { BatchCount } from '../../main/engine/yield/group-rates.ts';
import { type Drawn, jamesStein, jamesSteinArcsine } from '../../main/engine/yield/james-stein.ts';
import { type TwoLevelGrid, type TwoLevelRates, twoLevelRates } from '../../main/engine/yield/two-level-rates.ts';
import { compareNumber } from './compare-number.ts';
import type { Failure, KindTable, Vector } from './vector.ts';

interface Counts {
  readonly y: readonly number[];
  readonly n: readonly number[];
}

const countsOf = ({ y, n }: Counts): readonly BatchCount[] => y.map((successes, at) => ({ successes, of: n[at] ?? 0 }));

function checkGreater({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { aA, bA, aB, bB } = input as Record<string, number> & { aA: number; bA: number; aB: number; bB: number };
  const got = probabilityGreater({ a: aA, b: bA }, { a: aB, b: bB });
  return compareNumber('probability', got, (expected as { prob: number }).prob, tolerance);
}

function checkMoments({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const want = expected as { alpha: number; beta: number };
  const got = betaMoments(countsOf(input as Counts));
  return [
    ...compareNumber('alpha', got?.alpha, want.alpha, tolerance),
    ...compareNumber('beta', got?.beta, want.beta, tolerance),
  ];
}

interface FitTolerance {
  readonly mean: number;
  readonly logLik_without_choose: number;
}

function checkFit({ input, expected, tolerance }: Vector): readonly Failure[] {
  const want = expected as Partial<
    Record<'alpha' | 'beta' | 'mean' | 'concentration' | 'logLik_without_choose', number>
  >;
  const named = tolerance as unknown as number | FitTolerance;
  const near = (what: 'mean' | 'logLik_without_choose') => (typeof named === 'number' ? named : named[what]);
  const got = betaBinomialFit(countsOf(input as Counts));
  const concentration = got?.concentration ?? Number.POSITIVE_INFINITY;
  const compare = (what: string, value: number | undefined, wanted: number | undefined, allowed: number) =>
    wanted === undefined ? [] : compareNumber(what, value, wanted, allowed);
  return [
    ...compare('alpha', (got?.mean ?? 0) * concentration, want.alpha, near('mean')),
    ...compare('beta', (1 - (got?.mean ?? 0)) * concentration, want.beta, near('mean')),
    ...compare('mean', got?.mean, want.mean, near('mean')),
    ...compare('concentration', concentration, want.concentration, 0.01 * (want.concentration ?? 0)),
    ...compare('log likelihood', got?.logLikelihood, want.logLik_without_choose, near('logLik_without_choose')),
  ];
}

function checkPosterior({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { a, b, y, n } = input as { a: number; b: number; y: number; n: number };
  const want = expected as { mean: number; sd: number };
  const belief = afterCount({ a, b }, { successes: y, of: n });
  return [
    ...compareNumber('mean', meanOf(belief), want.mean, tolerance),
    ...compareNumber('sd', deviationOf(belief), want.sd, tolerance),
  ];
}

/** The box the vector names in words, or the one the rat data were solved on. */
const RAT_GRID: TwoLevelGrid = { x: [-2.6, -1.1], z: [0.8, 5.6], steps: 220 };
const solved = new Map<string, TwoLevelRates>();

function solvedFor(input: Counts): TwoLevelRates {
  const key = JSON.stringify([input.y, input.n]);
  const known = solved.get(key) ?? twoLevelRates(countsOf(input), RAT_GRID);
  solved.set(key, known);
  return known;
}

function checkTwoLevels({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const want = expected as { E_alpha: number; E_beta: number; mode_x: number; mode_z: number };
  const got = solvedFor(input as Counts);
  return [
    ...compareNumber('mean of alpha', got.alpha, want.E_alpha, tolerance),
    ...compareNumber('mean of beta', got.beta, want.E_beta, tolerance),
    ...compareNumber('mode of x', got.mode.x, want.mode_x, tolerance),
    ...compareNumber('mode of z', got.mode.z, want.mode_z, tolerance),
  ];
}

function checkBatchRate({ input, expected, tolerance = 0 }: Vector): readonly Failure[] {
  const { group, ...counts } = input as Counts & { group: number };
  const want = expected as { mean: number; sd: number; q025: number; q50: number; q975: number };
  const got = solvedFor(counts).batches[group - 1];
  return [
    ...compareNumber('mean', got?.mean, want.mean, tolerance),
    ...compareNumber('sd', got?.deviation, want.sd, tolerance),
    ...compareNumber('q025', got?.quantile(0.025), want.q025, tolerance),
    ...compareNumber('q50', got?.quantile(0.5), want.q50, tolerance),
    ...compareNumber('q975', got?.quantile(0.975), want.q975, tolerance),
  ];
}

const checkDrawn =
  (draw: (successes: readonly number[], of: number) => Drawn | null) =>
  ({ input, expected, tolerance = 0 }: Vector): readonly Failure[] => {
    const { hits, at_bats } = input as { hits: readonly number[]; at_bats: number };
    const want = expected as { c?: number; shrink?: number; p: readonly number[] };
    const got = draw(hits, at_bats);
    // The one prints what is kept of the distance, the other what is taken away.
    const kept = want.c ?? 1 - (want.shrink ?? 0);
    return [
      ...compareNumber('kept', got?.kept, kept, tolerance),
      ...want.p.flatMap((rate, at) => compareNumber(`rate ${at}`, got?.rates[at], rate, tolerance)),
    ];
  };

export const singleKinds: KindTable = {
  prob_greater: checkGreater,
  betabin_moments: checkMoments,
  betabin_mle: checkFit,
  beta_posterior: checkPosterior,
  hier2_bda: checkTwoLevels,
  hier2_bda_theta: checkBatchRate,
  james_stein: checkDrawn(jamesStein),
  james_stein_arcsine: checkDrawn(jamesSteinArcsine),
};
