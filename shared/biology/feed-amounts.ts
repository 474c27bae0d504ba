import type { Fact } from './fact.ts';
import { CUSTOM } from './sources.ts';

/** What is usually fed at once; a hint beside the form, never a rule. */
export const FEED_AMOUNTS = {
  /** Syrup 1:1 for a builder on one day. A litre a day made hives gather more pollen (COLOSS BEEBOOK, pollination, 7.2.1). */
  'syrup-1-1': { value: 1, unit: 'litres', range: [0.5, 1], source: CUSTOM, confidence: 'low' },
  /** Fondant for a mini mating box when it is filled. */
  fondant: { value: 0.3, unit: 'kilograms', range: [0.25, 0.5], source: CUSTOM, confidence: 'low' },
  /** Patty for a builder over four to five days. */
  'protein-patty': { value: 0.2, unit: 'kilograms', range: [0.1, 0.25], source: CUSTOM, confidence: 'low' },
} as const satisfies Record<string, Fact>;
