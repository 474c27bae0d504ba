import type { Fact } from './fact.ts';
import { BEEBOOK_DRONES, BEEBOOK_MATING_PLACE } from './sources.ts';

/** Drones: when they must be begun, and how many colonies must raise them. */
export const DRONES = {
  eggToMature: { value: 40, unit: 'days', range: [36, 40], source: BEEBOOK_DRONES, confidence: 'high' },
  combInAdvised: { value: 60, unit: 'days', range: [40, 60], source: BEEBOOK_DRONES, confidence: 'high' },
  fewestColonies: { value: 8, unit: 'colonies', range: [8, 10], source: BEEBOOK_MATING_PLACE, confidence: 'high' },
  queensPerColony: { value: 25, unit: 'queens', range: null, source: BEEBOOK_MATING_PLACE, confidence: 'high' },
  /** Practice in Florida: 60 colonies with a drone comb for up to 1,000 mating boxes. */
  coloniesPerThousand: {
    value: 60,
    unit: 'colonies',
    range: null,
    source: 'Florida Department of Agriculture, best practices for queen breeders',
    confidence: 'high',
  },
} as const satisfies Record<string, Fact>;

/** Drone colonies wanted for so many queens, by both rules; the larger number of the first never falls below 8. */
export function droneColoniesFor(queens: number): { readonly perQueens: number; readonly perBoxes: number } {
  return {
    perQueens: Math.max(DRONES.fewestColonies.value, Math.ceil(queens / DRONES.queensPerColony.value)),
    perBoxes: Math.ceil((queens * DRONES.coloniesPerThousand.value) / 1000),
  };
}
