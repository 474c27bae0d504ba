import type { StageCount } from './stage-rate.ts';

/** Fewer batches say nothing about whether stages go together. */
const FEWEST = 10;
/** From this correlation on a forecast that takes the stages as independent may be too sure. A judgement of this house. */
const GOES_TOGETHER = 0.3;

/**
 * Whether stages are good and bad together from batch to batch. Each batch's standardised residual, (x - n p) / sqrt(n p
 * (1 - p)), is correlated over the batches that have both stages (Pearson's r); the largest over all pairs of stages.
 * @param batches for each batch its stages, in the same order; null = not counted. null when fewer than 10 have both.
 */
export function stageCorrelation(batches: readonly (readonly (StageCount | null)[])[]): number | null {
  const stages = Math.max(0, ...batches.map((stagesOf) => stagesOf.length));
  const shares = Array.from({ length: stages }, (_, stage) => shareOf(batches.map((one) => one[stage] ?? null)));
  const found: number[] = [];
  for (let a = 0; a < stages; a += 1)
    for (let b = a + 1; b < stages; b += 1) {
      const pairs = batches.flatMap((one) => {
        const [x, y] = [residual(one[a] ?? null, shares[a] ?? 0), residual(one[b] ?? null, shares[b] ?? 0)];
        return x === null || y === null ? [] : [[x, y] as const];
      });
      const r = pairs.length < FEWEST ? null : pearson(pairs);
      if (r !== null) found.push(r);
    }
  return found.length === 0 ? null : Math.max(...found);
}

export const goTogether = (correlation: number | null): boolean => correlation !== null && correlation > GOES_TOGETHER;

function shareOf(counts: readonly (StageCount | null)[]): number {
  let [successes, of] = [0, 0];
  for (const count of counts) {
    successes += count?.successes ?? 0;
    of += count?.of ?? 0;
  }
  return of === 0 ? 0 : successes / of;
}

function residual(count: StageCount | null, share: number): number | null {
  if (!count || count.of === 0 || share <= 0 || share >= 1) return null;
  return (count.successes - count.of * share) / Math.sqrt(count.of * share * (1 - share));
}

/** null when one of the two does not vary. */
function pearson(pairs: readonly (readonly [number, number])[]): number | null {
  const mean = (at: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[at], 0) / pairs.length;
  const [mx, my] = [mean(0), mean(1)];
  let [xx, yy, xy] = [0, 0, 0];
  for (const [x, y] of pairs) {
    xx += (x - mx) ** 2;
    yy += (y - my) ** 2;
    xy += (x - mx) * (y - my);
  }
  return xx === 0 || yy === 0 ? null : xy / Math.sqrt(xx * yy);
}
