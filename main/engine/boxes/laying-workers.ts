import { BOX_TURNAROUND } from '../../../shared/biology/box-turnaround.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';
import { type BoxStanding, broodlessSince, lastLookOf } from './box-standing.ts';

/** The span of days in which workers may begin to lay, ends included; figures in shared/biology/box-turnaround. */
export interface LayingWorkers {
  readonly earliest: Day;
  readonly latest: Day;
}

export const layingWorkersAfter = (broodlessSince: Day): LayingWorkers => ({
  earliest: addDays(broodlessSince, BOX_TURNAROUND.layingWorkers.range[0]),
  latest: addDays(broodlessSince, BOX_TURNAROUND.layingWorkers.range[1]),
});

/**
 * When the workers of a box that holds a cell or queen may begin to lay, if no brood comes; null where the last look saw
 * brood, a drone layer's too, or no bees.
 */
export function layingWorkersSpan(box: BoxStanding): LayingWorkers | null {
  switch (lastLookOf(box)?.result) {
    case 'laying':
    case 'proved':
    case 'drone-layer':
    case 'gone':
      return null;
    default:
      return layingWorkersAfter(broodlessSince(box));
  }
}
