import type { STEP_TEXTS as english } from '../english/steps.ts';
import type { Translation } from '../translation.ts';
import { BEFORE_LARVAE } from './steps/before-larvae.ts';
import { BOXES } from './steps/boxes.ts';
import { CELLS } from './steps/cells.ts';

export const STEP_TEXTS: Translation<typeof english> = { ...BEFORE_LARVAE, ...CELLS, ...BOXES };
