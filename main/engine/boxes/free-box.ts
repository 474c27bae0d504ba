import { BOX_TURNAROUND } from '../../../shared/biology/box-turnaround.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';
import type { PlacementEnd } from '../../../shared/model/mating-box.ts';

export interface FreedBox {
  readonly endedOn: Day;
  readonly endReason: PlacementEnd | null;
}

export interface FreeBoxDays {
  /** The first day on which it should be given a cell. */
  readonly freeFrom: Day;
  /** The day to destroy the bees' own cells if no cell was given; null where no bees were left. */
  readonly ownCellsOn: Day | null;
  /** From this day on workers may lay; null where no bees were left. */
  readonly layingWorkersFrom: Day | null;
}

const NO_BEES_LEFT: readonly (PlacementEnd | null)[] = ['united', 'shaken-out'];

/** What lies ahead of a box that was freed: after a queen was taken out it rests, and its bees do not wait for ever. */
export function freeBoxDays({ endedOn, endReason }: FreedBox): FreeBoxDays {
  const rest = endReason === 'caught' ? BOX_TURNAROUND.daysToNextCell.value : 0;
  const hasBees = !NO_BEES_LEFT.includes(endReason);
  return {
    freeFrom: addDays(endedOn, rest),
    ownCellsOn: hasBees ? addDays(endedOn, BOX_TURNAROUND.ownCellsCheck.value) : null,
    layingWorkersFrom: hasBees ? addDays(endedOn, BOX_TURNAROUND.layingWorkers.value) : null,
  };
}
