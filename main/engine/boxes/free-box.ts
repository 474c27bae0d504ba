import { BOX_TURNAROUND } from '../../../shared/biology/box-turnaround.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';
import type { PlacementEnd } from '../../../shared/model/mating-box.ts';
import { type LayingWorkers, layingWorkersAfter } from './laying-workers.ts';

export interface FreedBox {
  readonly endedOn: Day;
  readonly endReason: PlacementEnd | null;
  /** The day brood was last seen in it, or its cell came. */
  readonly broodlessSince: Day;
}

export interface FreeBoxDays {
  /** The first day on which it should be given a cell. */
  readonly freeFrom: Day;
  /** The day to destroy the bees' own cells if no cell was given; null where no bees were left. */
  readonly ownCellsOn: Day | null;
  /** When workers may begin to lay if no brood comes; null where no bees were left. */
  readonly layingWorkers: LayingWorkers | null;
}

const NO_BEES_LEFT: readonly (PlacementEnd | null)[] = ['united', 'shaken-out'];

/**
 * What lies ahead of a box that was freed: after a queen was taken out it rests, and its bees do not wait for ever. A
 * queen who was taken out had laid until that day; else the bees have been without brood for longer.
 */
export function freeBoxDays({ endedOn, endReason, broodlessSince }: FreedBox): FreeBoxDays {
  const rest = endReason === 'caught' ? BOX_TURNAROUND.daysToNextCell.value : 0;
  const hasBees = !NO_BEES_LEFT.includes(endReason);
  return {
    freeFrom: addDays(endedOn, rest),
    ownCellsOn: hasBees ? addDays(endedOn, BOX_TURNAROUND.ownCellsCheck.value) : null,
    layingWorkers: hasBees ? layingWorkersAfter(endReason === 'caught' ? endedOn : broodlessSince) : null,
  };
}
