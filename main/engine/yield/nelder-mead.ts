/** Where a function is smallest, and how small it is there. */
export interface Minimum {
  readonly at: readonly number[];
  readonly value: number;
}

const MOST_ROUNDS = 4_000;
const SURE_ENOUGH = 1e-12;

/**
 * The simplex search of Nelder & Mead (1965, Computer Journal 7:308) with its usual coefficients, begun anew at its own
 * answer until that no longer changes. For smooth functions of a few values; no derivative is asked for.
 * @param step first size of the simplex, the same in each direction.
 */
export function nelderMead(f: (at: readonly number[]) => number, start: readonly number[], step = 0.5): Minimum {
  let best = search(f, { at: start, value: f(start) }, step);
  for (let again = 0; again < 6; again += 1) {
    const next = search(f, best, step / 2 ** (again + 1));
    const gained = best.value - next.value;
    best = next;
    if (gained < SURE_ENOUGH) break;
  }
  return best;
}

function search(f: (at: readonly number[]) => number, start: Minimum, step: number): Minimum {
  const point = (at: readonly number[]): Minimum => ({ at, value: f(at) });
  let simplex = [
    start,
    ...start.at.map((_, axis) => point(start.at.map((value, other) => (other === axis ? value + step : value)))),
  ];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    simplex = simplex.toSorted((a, b) => a.value - b.value);
    const [best, worst] = [simplex[0] ?? start, simplex.at(-1) ?? start];
    if (worst.value - best.value < SURE_ENOUGH && spread(simplex) < 1e-9) break;
    const others = simplex.slice(0, -1);
    const middle = best.at.map((_, axis) => others.reduce((sum, { at }) => sum + (at[axis] ?? 0), 0) / others.length);
    const along = (part: number) => point(middle.map((value, axis) => value + part * ((worst.at[axis] ?? 0) - value)));
    simplex = [...others, nextPoint(along, best, others.at(-1) ?? best, worst)];
    if (simplex.at(-1) === worst) simplex = shrunk(simplex, best, point);
  }
  return simplex.reduce((least, one) => (one.value < least.value ? one : least), start);
}

/** Reflected, expanded or contracted; the worst itself when none is better, which asks for shrinking. */
function nextPoint(along: (part: number) => Minimum, best: Minimum, second: Minimum, worst: Minimum): Minimum {
  const reflected = along(-1);
  if (reflected.value < best.value) {
    const expanded = along(-2);
    return expanded.value < reflected.value ? expanded : reflected;
  }
  if (reflected.value < second.value) return reflected;
  const contracted = along(reflected.value < worst.value ? -0.5 : 0.5);
  return contracted.value < Math.min(reflected.value, worst.value) ? contracted : worst;
}

const shrunk = (simplex: readonly Minimum[], best: Minimum, point: (at: readonly number[]) => Minimum): Minimum[] =>
  simplex.map((one) => (one === best ? one : point(one.at.map((value, axis) => (value + (best.at[axis] ?? 0)) / 2))));

function spread(simplex: readonly Minimum[]): number {
  const [first] = simplex;
  return Math.max(...simplex.flatMap(({ at }) => at.map((value, axis) => Math.abs(value - (first?.at[axis] ?? 0)))));
}
