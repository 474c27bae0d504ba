import {
  COOL_HIVE_HOURS,
  DEVELOPMENT,
  HOURS_PER_DEGREE,
  SAFETY_HOURS,
  USUAL_CELSIUS,
} from '../../../shared/biology/development.ts';
import type { LayingInterval } from './laying-interval.ts';

/** Whole days from day 0. */
export interface EmergenceDays {
  readonly earliest: number;
  readonly expected: number;
  readonly latest: number;
  /** Last day at whose noon 12 hours are left to the earliest emergence: cells are moved by then. */
  readonly placeDeadline: number;
}

const HOURS_FROM_MIDNIGHT_TO_NOON = 12;
const dayOf = (hoursFromNoon: number): number => Math.floor((hoursFromNoon + HOURS_FROM_MIDNIGHT_TO_NOON) / 24);

/**
 * Hours by which queens emerge later than at 34.5 °C when their sealed cells are kept at `celsius`; negative when
 * warmer. Straight line between the two points of Chuda-Mickiewicz & Samborski 2015.
 */
export const warmthShiftHours = (celsius: number | null): number =>
  celsius === null ? 0 : (USUAL_CELSIUS.value - celsius) * HOURS_PER_DEGREE.value;

/**
 * The window of emergence in days from day 0. Earliest: the oldest larva and 15 days, the shortest time in any source;
 * cool cells do not put it off, warm ones bring it forward. Latest: the youngest larva in a hive one degree cool.
 */
export function emergenceDays(laying: LayingInterval, celsius: number | null): EmergenceDays {
  const { value: usual, range } = DEVELOPMENT.queen.emerges;
  const shift = warmthShiftHours(celsius);
  const earliest = laying.oldest + range[0] + Math.min(0, shift);
  return {
    earliest: dayOf(earliest),
    expected: dayOf(laying.typical + usual + shift),
    latest: dayOf(laying.youngest + usual + COOL_HIVE_HOURS + Math.max(0, shift)),
    placeDeadline: Math.floor((earliest - SAFETY_HOURS.value) / 24),
  };
}
