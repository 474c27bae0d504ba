import { BOX_TURNAROUND } from '../../../shared/biology/box-turnaround.ts';
import { DEVELOPMENT } from '../../../shared/biology/development.ts';
import { addDays, type Day, laterOf } from '../../../shared/kernel/day.ts';
import { type BoxStanding, lastLookOf, openDay } from './box-standing.ts';

/** From the egg to sealed worker brood, in whole days: 9. */
const EGG_TO_SEALED_DAYS = Math.ceil(DEVELOPMENT.worker.sealed.value / 24);

/**
 * The day of the next look into a box, never inside a hands-off span; null when the last look settled the matter. A look
 * that is overdue keeps its day, so that it can be seen to be late.
 */
export function nextLook(box: BoxStanding): Day | null {
  const due = dueDay(box);
  return due === null ? null : openDay(box, due);
}

function dueDay(box: BoxStanding): Day | null {
  const last = lastLookOf(box);
  if (last === null) return box.emergenceCheckOn;
  switch (last.result) {
    case 'out':
      return box.firstLook.expected;
    case 'laying':
      return laterOf(box.sealedBroodLookOn, addDays(firstEggs(box) ?? last.on, EGG_TO_SEALED_DAYS));
    case 'virgin':
    case 'queen':
    case 'none':
      return laterOf(box.firstLook.expected, addDays(last.on, BOX_TURNAROUND.lookAgain.value));
    case 'cell':
      return laterOf(box.emergenceCheckOn, addDays(last.on, BOX_TURNAROUND.lookAgain.value));
    default:
      return null;
  }
}

const firstEggs = ({ looks }: BoxStanding): Day | null => looks.find((look) => look.result === 'laying')?.on ?? null;
