import type { ObservationKind } from '../model/step.ts';
import type { Fact } from './fact.ts';
import { BEEBOOK_MATING_BOXES, CUSTOM, DEVELOPMENT_RANGES, SEALING_DAYS } from './sources.ts';

/** How long before a sighting something must have happened; always the shortest time, so that nothing true is ruled out. */
export const SIGHTING_HOURS = {
  /** "First seen" means: not there at a look the day before. */
  betweenLooks: { value: 24, unit: 'hours', range: [12, 24], source: CUSTOM, confidence: 'low' },
  /** Bees thin and brown the tip from 13 to 14 days after laying; half a day is left for the eye. */
  laidToBrowned: {
    value: 12.5 * 24,
    unit: 'hours',
    range: [12.5 * 24, 14 * 24],
    source: `${CUSTOM}, from memory`,
    confidence: 'low',
  },
  /** The earliest eggs met with; 8.5 to 9.8 days in good weather. */
  emergedToEggs: {
    value: 8 * 24,
    unit: 'hours',
    range: [8 * 24, 21 * 24],
    source: `Akyol et al. 2008, J. Kansas Ent. Soc. 81(2); ${BEEBOOK_MATING_BOXES}`,
    confidence: 'high',
  },
  /** Worker brood is sealed 8.5 to 9 days after the egg. */
  eggToSealedBrood: {
    value: 8.5 * 24,
    unit: 'hours',
    range: [8.5 * 24, 9 * 24],
    source: SEALING_DAYS,
    confidence: 'high',
  },
  /** An egg seen for the first time gives a one-day larva four days later. */
  eggSeenToLarva: {
    value: 4 * 24,
    unit: 'hours',
    range: [3.5 * 24, 4 * 24],
    source: DEVELOPMENT_RANGES,
    confidence: 'high',
  },
  /** A comb not drawn yet needs at least a day more before it is laid. */
  undrawnToLaid: { value: 24, unit: 'hours', range: null, source: CUSTOM, confidence: 'low' },
} as const satisfies Record<string, Fact>;

/** Sightings that say nothing without an age or size in hours. */
export const SIGHTINGS_WITH_HOURS: readonly ObservationKind[] = ['larva-size', 'larva-age-note'];

/** Sightings that presuppose a laid egg, so cannot lie before laying. */
export const SIGHTINGS_OF_BROOD: readonly ObservationKind[] = [
  'larva-size',
  'larva-age-note',
  'cells-open',
  'cells-sealed',
  'cells-browned',
  'emerged-hole',
  'queen-seen',
  'first-eggs',
  'sealed-brood',
  'larvae-too-old',
  'cells-torn-down',
];
