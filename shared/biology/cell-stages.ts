/**
 * What a cell found in a hive looks like, and days from that sight to its sealing (negative = sealed before). The open stages as
 * printed in SWARM_CELLS (sources.ts); the two sealed ones are reckoned from brown tips 5 days after sealing (common practice,
 * no source).
 */
export const CELL_STAGES = [
  { key: 'egg', daysToSealing: [5, 8] },
  { key: 'small-larva', daysToSealing: [3, 4] },
  { key: 'large-larva', daysToSealing: [0, 1] },
  { key: 'sealed-pale', daysToSealing: [-4, 0] },
  { key: 'sealed-brown-tip', daysToSealing: [-8, -5] },
] as const satisfies readonly { readonly key: string; readonly daysToSealing: readonly [number, number] }[];
export type CellStage = (typeof CELL_STAGES)[number]['key'];
