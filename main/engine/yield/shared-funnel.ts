import { convolve } from './convolve.ts';
import { certain, cutAt, fixedChain, fixedFunnel } from './funnel.ts';
import type { RateNode } from './rate-nodes.ts';
import { ratePoints } from './rate-points.ts';

export interface UncertainStage {
  readonly nodes: readonly RateNode[];
  readonly mostGoOn: number | null;
}

/**
 * Queens from several batches that share the same unknown rates: the exact chain for each of 512 fixed settings of the
 * rates, averaged. Treating the batches as independent would promise too much: they are good or bad together.
 * @param sharedBoxes boxes for all batches together; what goes into them is added up, cut, and goes on as one lot.
 * @param stagesInBoxes how many of the last stages happen in the boxes: 1 = queens put in, 2 = ripe cells put in.
 */
export function sharedFunnel(
  given: readonly number[],
  stages: readonly UncertainStage[],
  sharedBoxes: number | null = null,
  stagesInBoxes = 1,
): Float64Array {
  const total = new Float64Array(given.reduce((sum, n) => sum + n, 0) + 1);
  const points = ratePoints(stages.map((stage) => stage.nodes));
  const parted = sharedBoxes === null ? stages.length : stages.length - stagesInBoxes;
  for (const point of points) {
    const chain = point.map((rates, stage) => ({ ...rates, mostGoOn: stages[stage]?.mostGoOn ?? null }));
    const bySize = new Map(given.map((n) => [n, fixedFunnel(n, chain.slice(0, parted))]));
    let sum = given.reduce((all, n) => convolve(all, bySize.get(n) ?? certain(0)), certain(0));
    if (sharedBoxes !== null) sum = fixedChain(cutAt(sum, sharedBoxes), chain.slice(parted));
    for (let k = 0; k < sum.length; k += 1) total[k] = (total[k] ?? 0) + (sum[k] ?? 0) / points.length;
  }
  return total;
}
