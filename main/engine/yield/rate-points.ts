import { haltonPoints } from './halton-points.ts';
import type { RateNode } from './rate-nodes.ts';

export interface RatePoint {
  readonly rate: number;
  readonly concentration: number;
}

/**
 * 512 equally likely settings of all stages' rates at once, from what is known of each: the rate by its quantile, then
 * the concentration by its own, given the rate. Stages are taken as independent.
 */
export function ratePoints(stages: readonly (readonly RateNode[])[]): readonly (readonly RatePoint[])[] {
  const ladders = stages.map(ladderOf);
  return haltonPoints(2 * stages.length).map((point) =>
    ladders.map((ladder, stage) => pointOn(ladder, point[stage] ?? 0.5, point[stages.length + stage] ?? 0.5)),
  );
}

interface Rung {
  readonly rate: number;
  readonly weight: number;
  readonly nodes: readonly RateNode[];
}

function ladderOf(nodes: readonly RateNode[]): readonly Rung[] {
  return [...Map.groupBy(nodes, (node) => node.rate)]
    .map(([rate, same]) => ({ rate, nodes: same, weight: same.reduce((sum, { weight }) => sum + weight, 0) }))
    .toSorted((a, b) => a.rate - b.rate);
}

const logit = (rate: number): number => Math.log(rate / (1 - rate));

function pointOn(ladder: readonly Rung[], u: number, v: number): RatePoint {
  const only = ladder[0];
  if (!only) throw new Error('a stage without any rate');
  if (ladder.length === 1) return { rate: only.rate, concentration: concentrationAt(only, v) };
  let sum = 0;
  let before: { readonly rung: Rung; readonly middle: number } | null = null;
  for (const rung of ladder) {
    const middle = sum + rung.weight / 2;
    if (middle >= u) {
      if (!before) return { rate: rung.rate, concentration: concentrationAt(rung, v) };
      const part = (u - before.middle) / (middle - before.middle);
      const at = logit(before.rung.rate) + part * (logit(rung.rate) - logit(before.rung.rate));
      return { rate: 1 / (1 + Math.exp(-at)), concentration: concentrationAt(part < 0.5 ? before.rung : rung, v) };
    }
    sum += rung.weight;
    before = { rung, middle };
  }
  const last = ladder.at(-1) ?? only;
  return { rate: last.rate, concentration: concentrationAt(last, v) };
}

function concentrationAt(rung: Rung, v: number): number {
  const sorted = rung.nodes.toSorted((a, b) => a.concentration - b.concentration);
  let sum = 0;
  for (const node of sorted) {
    sum += node.weight / rung.weight;
    if (sum >= v) return node.concentration;
  }
  return sorted.at(-1)?.concentration ?? 1;
}
