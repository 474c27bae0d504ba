import { SWARM_CELLS } from './sources.ts';

/** What a cell found in a hive looks like, and days from that sight to its sealing (negative = sealed before). */
export const CELL_STAGES = [
  { key: 'egg', daysToSealing: [5, 8] },
  { key: 'small-larva', daysToSealing: [3, 4] },
  { key: 'large-larva', daysToSealing: [0, 1] },
  { key: 'sealed-pale', daysToSealing: [-4, 0] },
  { key: 'sealed-brown-tip', daysToSealing: [-8, -5] },
] as const satisfies readonly { readonly key: string; readonly daysToSealing: readonly [number, number] }[];
export type CellStage = (typeof CELL_STAGES)[number]['key'];

/** The open stages as printed; the two sealed ones are reckoned from brown tips 5 days after sealing. */
export const CELL_STAGE_SOURCE = `${SWARM_CELLS}; sealed stages: common practice, no source`;
