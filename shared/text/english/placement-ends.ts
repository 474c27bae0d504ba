import type { PlacementEnd } from '../../model/mating-box.ts';

export const PLACEMENT_ENDS = {
  caught: 'queen caught',
  failed: 'failed',
  united: 'united',
  'shaken-out': 'shaken out',
  'cell-taken-back': 'cell taken back',
  other: 'other',
} as const satisfies Record<PlacementEnd, string>;
