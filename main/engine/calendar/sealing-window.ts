import { CELL_STAGES, type CellStage } from '../../../shared/biology/cell-stages.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';

export interface SealingWindow {
  readonly earliest: Day;
  readonly latest: Day;
}

/**
 * When a cell found at a stage is or was sealed. For the anchor of swarm and supersedure cells take the earliest day:
 * a queen out before she is awaited does the harm.
 */
export function sealingWindow(stage: CellStage, seenOn: Day): SealingWindow {
  const found = CELL_STAGES.find(({ key }) => key === stage);
  if (!found) throw new Error(`no such stage: ${stage}`);
  const [soonest, last] = found.daysToSealing;
  return { earliest: addDays(seenOn, soonest), latest: addDays(seenOn, last) };
}
