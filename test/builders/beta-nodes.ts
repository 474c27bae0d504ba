import { normalised } from '../../main/engine/yield/rate-grid.ts';
import type { RateNode } from '../../main/engine/yield/rate-nodes.ts';

/** Reach of the logit and its step for a beta belief; beyond it lies less than 1e-16 of Beta(1, 1). */
const REACH = 40;
const STEP = 0.05;
const NEGLIGIBLE = 1e-18;

/**
 * A rate known as Beta(a, b), batches differing with one concentration. The trapezoid rule on the logit converges
 * faster than any power of the step for such smooth densities (Trefethen & Weideman 2014, SIAM Review 56:385).
 */
export function nodesOfBeta(a: number, b: number, concentration: number): readonly RateNode[] {
  const logits = Float64Array.from({ length: (2 * REACH) / STEP + 1 }, (_, node) => node * STEP - REACH);
  const weights = normalised(
    logits.map((logit) => -a * Math.log1p(Math.exp(-logit)) - b * Math.log1p(Math.exp(logit))),
  );
  return [...weights].flatMap((weight, node): readonly RateNode[] =>
    weight < NEGLIGIBLE ? [] : [{ rate: 1 / (1 + Math.exp(-(logits[node] ?? 0))), concentration, weight }],
  );
}
