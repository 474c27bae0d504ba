import { concentrationOf, rateGrid, spreadNodes } from './rate-grid.ts';

/** One possible truth about a stage: its rate, how alike batches are, and how likely that is (weights sum to 1). */
export interface RateNode {
  readonly rate: number;
  readonly concentration: number;
  readonly weight: number;
}

const NEGLIGIBLE = 1e-9;

/** Nodes lighter than this change no forecast by a queen. */
const LIGHT = 1e-6;

/** The same belief without its lightest nodes: what plans are reckoned with. */
export function heavyNodes(nodes: readonly RateNode[]): readonly RateNode[] {
  const kept = nodes.filter(({ weight }) => weight > LIGHT);
  const total = kept.reduce((sum, { weight }) => sum + weight, 0) || 1;
  return kept.map((node) => ({ ...node, weight: node.weight / total }));
}

/** What is known of a group's rate, from the rows (by spread within) of groupRates. */
export function nodesOfJoint(joint: readonly Float64Array[]): readonly RateNode[] {
  const nodes = joint[0]?.length ?? 0;
  if (nodes < 2) return [];
  const { rates } = rateGrid(16 / (nodes - 1));
  const kept = joint.flatMap((weights, within) => {
    const concentration = concentrationOf(spreadNodes()[within] ?? 0.5);
    return [...weights].flatMap((weight, node): readonly RateNode[] =>
      weight < NEGLIGIBLE ? [] : [{ rate: rates[node] ?? 0.5, concentration, weight }],
    );
  });
  const total = kept.reduce((sum, { weight }) => sum + weight, 0) || 1;
  return kept.map((node) => ({ ...node, weight: node.weight / total }));
}

/** A rate taken as known. */
export const nodesOfFixed = (rate: number, concentration: number): readonly RateNode[] => [
  { rate, concentration, weight: 1 },
];

/** Expected rate. */
export const meanRate = (nodes: readonly RateNode[]): number =>
  nodes.reduce((sum, { rate, weight }) => sum + weight * rate, 0);

/** The node below which the given share of the probability lies, nodes being in order of their rate. */
export function nodeAt(sorted: readonly RateNode[], share: number): RateNode | undefined {
  let sum = 0;
  for (const node of sorted) {
    sum += node.weight;
    if (sum >= share) return node;
  }
  return sorted.at(-1);
}
