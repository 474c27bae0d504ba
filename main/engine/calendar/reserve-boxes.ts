import { addDays, type Day } from '../../../shared/kernel/day.ts';
import type { PlannedBatch, PlannedBox } from '../../../shared/model/clash.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';
import { isOpen } from './open-steps.ts';

/**
 * The boxes as the next batch finds them: each batch that still has cells to place takes as many boxes as it has cells,
 * those free first, and gives them back on the day after its queens are proved. A batch whose number of cells is not
 * known takes none.
 */
export function reserveBoxes(boxes: readonly PlannedBox[], batches: readonly PlannedBatch[]): readonly PlannedBox[] {
  const placing = batches
    .flatMap(({ timetable, cells }) => {
      const step = timetable.steps.find((one) => one.step === 'place-cells');
      return step && isOpen(step) && cells !== null ? [{ on: step.expected, timetable, cells }] : [];
    })
    .toSorted((a, b) => a.on - b.on);
  return placing.reduce((left, { on, timetable, cells }) => {
    const taken = new Set(
      left
        .filter(({ freeFrom }) => freeFrom !== null && freeFrom <= on)
        .toSorted((a, b) => (a.freeFrom ?? 0) - (b.freeFrom ?? 0))
        .slice(0, cells)
        .map(({ id }) => id),
    );
    return left.map((box) => (taken.has(box.id) ? { ...box, freeFrom: givenBackOn(timetable) } : box));
  }, boxes);
}

function givenBackOn({ steps }: Timetable): Day | null {
  const proved = steps.find((one) => one.step === 'sealed-brood-look');
  return proved ? addDays(proved.expected, 1) : null;
}
