import type { Fact } from './fact.ts';
import { BEEBOOK_MATING_BOXES, CUSTOM, GIVE_UP } from './sources.ts';

const BETWEEN_ROUNDS = 'de Bruyn 2015, Bee Craft April and May';

/** How a mating box goes from one queen to the next, and how long its bees bear being without brood. */
export const BOX_TURNAROUND = {
  /** Least days from taking a queen out to the next cell; the bees' own cells are destroyed first. */
  daysToNextCell: { value: 2, unit: 'days', range: [1, 2], source: BETWEEN_ROUNDS, confidence: 'medium' },
  /** Days after a queen was taken out on which the bees' own cells are destroyed, if no cell was given. */
  ownCellsCheck: { value: 4, unit: 'days', range: [4, 5], source: BETWEEN_ROUNDS, confidence: 'medium' },
  /** Days without brood from which workers may begin to lay; three to four weeks. */
  layingWorkers: { value: 21, unit: 'days', range: [21, 28], source: 'from memory, no source seen', confidence: 'low' },
  /** A queen without eggs is late from this day after emergence on. */
  lateForMating: { value: 21, unit: 'days', range: [21, 30], source: BEEBOOK_MATING_BOXES, confidence: 'high' },
  /** A queen without eggs is given up from this day after emergence on. */
  giveUp: { value: 28, unit: 'days', range: [28, 35], source: GIVE_UP, confidence: 'medium' },
  /** Queens taken out of their box before this day after emergence live less often to the next season. */
  ageToTake: {
    value: 21,
    unit: 'days',
    range: [21, 28],
    source: 'Rhodes, Somerville & Harden 2004, Apidologie 35:383; Rhodes & Denney 2003',
    confidence: 'high',
  },
  /** Days until a box that left a doubt is looked into again. */
  lookAgain: { value: 4, unit: 'days', range: [3, 5], source: CUSTOM, confidence: 'low' },
  /** Days after the expected emergence from which a cell that is still closed is given up. */
  closedCell: { value: 4, unit: 'days', range: [3, 4], source: CUSTOM, confidence: 'low' },
  /** How far ahead ripe cells are worth waiting for. */
  cellsWorthWaiting: { value: 7, unit: 'days', range: null, source: CUSTOM, confidence: 'low' },
  /** A strength typed longer ago says little of a box before winter: it is looked at again first. */
  strengthHolds: { value: 28, unit: 'days', range: null, source: CUSTOM, confidence: 'low' },
} as const satisfies Record<string, Fact>;

/** A box typed with this strength or less is too weak for another round, or to stay by itself before winter (five steps; common practice, no source). */
export const WEAK_STRENGTH = 2;

/** Looks without a queen after which a box counts as queenless: a virgin is easily missed once (common practice, no source). */
export const LOOKS_TO_BE_SURE = 2;
