import type { BuilderType } from '../model/method.ts';
import {
  COURSE_DEMO,
  CUSTOM,
  DIVIDER_BOARD,
  EMERGENCY_DERIVED,
  OVER_EXCLUDER,
  PARKED_QUEEN,
  STARTER_BOX,
} from './sources.ts';
import type { StepRow } from './step-row.ts';

const builderJob = (row: Pick<StepRow, 'step' | 'days' | 'minutes' | 'source'> & Partial<StepRow>): StepRow => ({
  kind: 'job',
  place: 'builder',
  base: 'larvae',
  timeOfDay: 'any',
  hardness: 'must',
  materials: [],
  confidence: 'medium',
  ...row,
});

const FEED = builderJob({
  step: 'feed-start',
  days: [-7, -3, -1],
  minutes: 10,
  materials: ['sugar syrup', 'pollen'],
  timeOfDay: 'evening',
  hardness: 'should',
  source: CUSTOM,
  confidence: 'low',
});

/** Own cells over larvae of 2 to 4 days could emerge from about day 9 after the queen went. */
const checkOwnCells = (days: StepRow['days'], source: string): StepRow =>
  builderJob({ step: 'check-own-cells', days, minutes: 20, timeOfDay: 'warm-hours', hardness: 'should', source });

/**
 * What each way of arranging the builder asks for around the day the larvae are given.
 * `make-queenless` is the moment the bees that get the larvae lose touch with the queen; `remove-queen` is an earlier
 * step of its own where there is one; `open-divider` is the moment her influence comes back.
 */
export const BUILDER_STEPS: Readonly<Record<BuilderType, readonly StepRow[]>> = {
  queenless: [
    FEED,
    builderJob({
      step: 'make-queenless',
      days: [-2, -1, 0],
      minutes: 45,
      materials: ['queen cage'],
      source: COURSE_DEMO,
    }),
    checkOwnCells([3, 4, 5], EMERGENCY_DERIVED),
  ],
  'starter-then-finisher': [
    FEED,
    // Shaken 2 to 6 hours before the larvae come, by some the evening before.
    builderJob({
      step: 'make-queenless',
      days: [-1, 0, 0],
      minutes: 60,
      materials: ['starter box', 'pollen', 'water spray'],
      source: STARTER_BOX,
    }),
    builderJob({
      step: 'move-to-finisher',
      days: [1, 1, 2],
      minutes: 30,
      timeOfDay: 'warm-hours',
      source: STARTER_BOX,
    }),
    checkOwnCells([4, 5, 6], CUSTOM),
  ],
  'queenright-over-excluder': [
    FEED,
    // Usually 6 to 24 hours before; the first arranging up to a week before.
    builderJob({
      step: 'make-queenless',
      days: [-7, -1, 0],
      minutes: 45,
      materials: ['queen excluder'],
      source: OVER_EXCLUDER,
    }),
    checkOwnCells([4, 5, 6], CUSTOM),
  ],
  'divider-board': [
    FEED,
    builderJob({
      step: 'remove-queen',
      days: [-3, -2, -2],
      minutes: 60,
      materials: ['divider board', 'queen excluder'],
      source: DIVIDER_BOARD,
    }),
    builderJob({ step: 'make-queenless', days: [-1, -1, 0], minutes: 15, source: DIVIDER_BOARD }),
    builderJob({ step: 'open-divider', days: [1, 1, 2], minutes: 10, source: DIVIDER_BOARD }),
    checkOwnCells([4, 5, 6], CUSTOM),
  ],
  'queen-parked-above': [
    FEED,
    builderJob({
      step: 'make-queenless',
      days: [-1, -1, 0],
      minutes: 45,
      materials: ['screened floor'],
      source: PARKED_QUEEN,
    }),
    builderJob({
      step: 'open-divider',
      days: [1, 1, 2],
      minutes: 30,
      materials: ['queen excluder'],
      source: PARKED_QUEEN,
    }),
    checkOwnCells([4, 5, 6], CUSTOM),
  ],
};
