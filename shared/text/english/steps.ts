import type { Step } from '../../model/step.ts';
import { BEFORE_LARVAE } from './steps/before-larvae.ts';
import { BOXES } from './steps/boxes.ts';
import { CELLS } from './steps/cells.ts';
import type { StepText } from './steps/step-words.ts';

/** The words of every step. A step without words does not compile. */
export const STEP_TEXTS: Readonly<Record<Step, StepText>> = {
  ...BEFORE_LARVAE,
  ...CELLS,
  ...BOXES,
} satisfies Record<Step, StepText>;
