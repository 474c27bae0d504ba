// Maximum-likelihood answers of lme4 (Laplace). The window weighs the same log likelihood over a grid of spreads with priors;
// here it is maximised, so crossedMode is what is tested.
import { cholesky, inverse } from '../../main/engine/yield/cholesky.ts';
import { type CrossedBatch, type CrossedMode, crossedMode } from '../../main/engine/yield/crossed-mode.ts';
import { nelderMead } from '../../main/engine/yield/nelder-mead.ts';
import { compareNumber } from './compare-number.ts';
import type { Failure, KindTable, Vector } from './vector.ts';

/** A model with fixed effects (columns of the design), factors whose levels are random, and perhaps one effect a batch. */
interface Model {
  readonly counts: readonly Pick<CrossedBatch, 'successes' | 'of' | 'levels'>[];
  readonly design: readonly (readonly number[])[];
  readonly levels: readonly number[];
  /** Names of the random factors in order; 'batch' last where every batch has its own. */
  readonly random: readonly string[];
}

type Input = Readonly<Record<string, readonly number[]>> & { readonly formula: string };

const at = (list: readonly number[] | undefined, index: number): number => list?.[index] ?? 0;
/** Treatment contrasts: a column of ones, then one for each level but the first. */
const contrasts = (list: readonly number[]): readonly (readonly number[])[] => {
  const most = Math.max(...list);
  return list.map((level) =>
    Array.from({ length: most }, (_, column) => (column === 0 || level === column + 1 ? 1 : 0)),
  );
};

function modelOf(input: Input): Model {
  const of = input.n ?? [];
  const successes = input.r ?? input.y ?? input.x ?? [];
  const counts = (levelsOf: (index: number) => readonly number[]) =>
    of.map((n, index) => ({ of: n, successes: at(successes, index), levels: levelsOf(index) }));
  if (input.x1) {
    const design = of.map((_, i) => [1, at(input.x1, i), at(input.x2, i), at(input.x1, i) * at(input.x2, i)]);
    return { counts: counts(() => []), design, levels: [], random: ['batch'] };
  }
  if (input.herd) {
    const { herd, period = [] } = input;
    return {
      counts: counts((i) => [at(herd, i) - 1]),
      design: contrasts(period),
      levels: [Math.max(...herd)],
      random: ['herd'],
    };
  }
  const { method = [], builder = [] } = input;
  const crossed = [Math.max(...method), Math.max(...builder)];
  if (input.formula.startsWith('method'))
    return {
      counts: counts((i) => [at(builder, i) - 1]),
      design: contrasts(method),
      levels: crossed.slice(1),
      random: ['builder', 'batch'],
    };
  return {
    counts: counts((i) => [at(method, i) - 1, at(builder, i) - 1]),
    design: of.map(() => [1]),
    levels: crossed,
    random: ['method', 'builder', 'batch'],
  };
}

/** As good as no spread: an effect that cannot move. */
const PINNED = 1e-7;

function modeAt({ counts, design, levels, random }: Model, parameters: readonly number[]): CrossedMode {
  const fixed = design[0]?.length ?? 0;
  const spreads = random.map((_, factor) => Math.exp(Math.max(-12, at(parameters, fixed + factor))));
  const batches = counts.map((count, row) => ({
    ...count,
    offset: (design[row] ?? []).reduce((sum, value, column) => sum + value * at(parameters, column), 0),
  }));
  const batch = random.at(-1) === 'batch' ? at(spreads, random.length - 1) : PINNED;
  return crossedMode(batches, levels, { intercept: PINNED, factors: spreads.slice(0, levels.length), batch });
}

/**
 * Standard errors from the curvature of the log likelihood at its top, by differences. lme4 stops its inner search early: on
 * the cbpp data its log likelihood stands 0.0003 below the exact Laplace value at its own answer, and its errors 1 % below
 * those of the exact curvature (reckoned here, and apart from this code herd by herd, for three sizes of difference). They
 * are therefore compared to 2 %; everything else to the vector's own tolerance.
 */
const ERROR_SHARE = 0.02;

function standardErrors(f: (p: readonly number[]) => number, top: readonly number[]): readonly number[] {
  const h = 1e-3;
  const moved = (changes: readonly (readonly [number, number])[]) =>
    f(top.map((value, axis) => value + changes.filter(([on]) => on === axis).reduce((sum, [, by]) => sum + by, 0)));
  const curvature = top.map((_, a) =>
    Float64Array.from(top, (_value, b) => {
      const corner = (da: number, db: number) =>
        moved([
          [a, da * h],
          [b, db * h],
        ]);
      return (corner(1, 1) - corner(1, -1) - corner(-1, 1) + corner(-1, -1)) / (4 * h * h);
    }),
  );
  const covariance = inverse(cholesky(curvature));
  return covariance.map((row, axis) => Math.sqrt(row[axis] ?? Number.NaN));
}

interface Expected {
  readonly beta: readonly number[];
  readonly se?: readonly number[];
  readonly sigma: number | Readonly<Record<string, number>>;
  readonly logLik: number;
  readonly ranef?: readonly number[];
  readonly ranef_method?: readonly number[];
  readonly ranef_builder?: readonly number[];
}

function checkLaplace({ input, expected, tolerance }: Vector): readonly Failure[] {
  const want = expected as Expected;
  const named = tolerance as unknown as number | Readonly<Record<string, number>>;
  const within = (what: string) => (typeof named === 'number' ? named : (named[what] ?? 0));
  const model = modelOf(input as unknown as Input);
  const fixed = model.design[0]?.length ?? 0;
  const minus = (parameters: readonly number[]) => -modeAt(model, parameters).logEvidence;
  const start = [...Array.from({ length: fixed }, () => 0), ...model.random.map(() => -1)];
  const top = nelderMead(minus, start);
  const { effects } = modeAt(model, top.at);
  const errors = want.se ? standardErrors(minus, top.at) : [];
  const sigmaOf = (name: string) => (typeof want.sigma === 'number' ? want.sigma : (want.sigma[name] ?? Number.NaN));
  const list = (what: string, got: (index: number) => number | undefined, wanted: readonly number[], allowed: number) =>
    wanted.flatMap((value, index) => compareNumber(`${what} ${index}`, got(index), value, allowed));
  return [
    ...compareNumber('log likelihood', -top.value, want.logLik, within('logLik')),
    ...list('effect', (index) => top.at[index], want.beta, within('beta')),
    ...(want.se ?? []).flatMap((value, index) =>
      compareNumber(`its error ${index}`, errors[index], value, Math.max(within('se'), ERROR_SHARE * value)),
    ),
    ...model.random.flatMap((name, factor) =>
      compareNumber(`spread of ${name}`, Math.exp(at(top.at, fixed + factor)), sigmaOf(name), within('sigma')),
    ),
    ...list('herd', (index) => effects[1 + index], want.ranef ?? [], within('ranef')),
    ...list('method', (index) => effects[1 + index], want.ranef_method ?? [], within('ranef')),
    ...list(
      'builder',
      (index) => effects[1 + (model.levels[0] ?? 0) + index],
      want.ranef_builder ?? [],
      within('ranef'),
    ),
  ];
}

export const laplaceKinds: KindTable = { glmm_laplace: checkLaplace };
