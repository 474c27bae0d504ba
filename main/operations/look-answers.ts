import type { LookResult } from '../../shared/model/look.ts';
import type { Step } from '../../shared/model/step.ts';

/** Looks into mating boxes that a timetable asks for. */
export const LOOK_STEPS: readonly Step[] = ['emergence-check', 'first-look', 'sealed-brood-look'];

const SETTLED: readonly LookResult[] = ['proved', 'none', 'gone', 'drone-layer', 'cell-failed'];
const EMERGED: readonly LookResult[] = [...SETTLED, 'out', 'virgin', 'queen', 'laying'];

/** Whether the last result in a box already answers a look that is due, so that the box need not be opened for it. */
export function answersLook(step: Step, last: LookResult | null): boolean {
  if (last === null) return false;
  if (step === 'emergence-check') return EMERGED.includes(last);
  if (step === 'first-look') return last === 'laying' || SETTLED.includes(last);
  return SETTLED.includes(last);
}
