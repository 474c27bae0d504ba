import type { BuilderType, Method } from '../../model/method.ts';
import type { Step } from '../../model/step.ts';
import { BEFORE_LARVAE } from './steps/before-larvae.ts';
import { BOXES } from './steps/boxes.ts';
import { CELLS } from './steps/cells.ts';
import type { StepText, StepWords } from './steps/step-words.ts';

/** The words of every step. A step without words does not compile. */
export const STEP_TEXTS: Readonly<Record<Step, StepText>> = {
  ...BEFORE_LARVAE,
  ...CELLS,
  ...BOXES,
} satisfies Record<Step, StepText>;

/** The words of a step for one method and one way of arranging the builder. */
export function stepWords(step: Step, method: Method, builderType: BuilderType): StepWords {
  const { byMethod, byBuilder, title, what, why, caution } = STEP_TEXTS[step];
  // Cells the bees began by themselves have no builder, so nothing is said about how it is arranged.
  const forBuilder = METHODS_WITHOUT_BUILDER.includes(method) ? undefined : byBuilder?.[builderType];
  return { title, what, why, caution, ...forBuilder, ...byMethod?.[method] };
}

const METHODS_WITHOUT_BUILDER: readonly Method[] = ['emergency-cells', 'swarm-cells', 'supersedure-cells'];

export const stepTitle = (step: Step, method: Method, builderType: BuilderType): string =>
  stepWords(step, method, builderType).title;
