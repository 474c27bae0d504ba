import type { ObservationKind } from '../model/step.ts';
import { CUSTOM, EMERGENCY_STUDY, OLD_LARVA_NOTE } from './sources.ts';

/** What the trade does when something went otherwise. Sentences are in shared/text/english/remedies.ts. */
export const REMEDIES = [
  'feed-or-wait-for-flow',
  'move-hive-to-shed-foragers',
  'give-another-comb',
  'start-over',
  'give-new-larvae-as-new-batch',
  'use-larvae-today',
  'wait-a-day',
  'move-cells-earlier',
  'cage-cells-now',
  'look-for-hidden-queen',
  'destroy-own-cells',
  'add-bees-and-cover',
] as const;
export type Remedy = (typeof REMEDIES)[number];

interface RemedyRow {
  readonly remedies: readonly Remedy[];
  readonly source: string;
}

/** What can be done after each sighting, the likeliest help first; an empty list where nothing is called for. */
export const REMEDIES_BY_SIGHTING = {
  'eggs-first-seen': { remedies: [], source: CUSTOM },
  'larva-size': { remedies: [], source: CUSTOM },
  'larva-age-note': { remedies: ['move-cells-earlier'], source: OLD_LARVA_NOTE },
  'cells-open': { remedies: ['add-bees-and-cover', 'feed-or-wait-for-flow'], source: CUSTOM },
  'cells-sealed': { remedies: [], source: CUSTOM },
  'cells-browned': { remedies: ['move-cells-earlier'], source: CUSTOM },
  'emerged-hole': { remedies: ['cage-cells-now'], source: OLD_LARVA_NOTE },
  'queen-seen': { remedies: ['cage-cells-now'], source: OLD_LARVA_NOTE },
  'first-eggs': { remedies: [], source: CUSTOM },
  'sealed-brood': { remedies: [], source: CUSTOM },
  'frame-not-drawn': { remedies: ['feed-or-wait-for-flow', 'give-another-comb'], source: CUSTOM },
  'comb-filled-with-nectar': {
    remedies: ['move-hive-to-shed-foragers', 'give-another-comb', 'start-over'],
    source: CUSTOM,
  },
  'larvae-too-old': { remedies: ['start-over', 'move-cells-earlier'], source: OLD_LARVA_NOTE },
  'cells-torn-down': {
    remedies: ['look-for-hidden-queen', 'destroy-own-cells', 'give-new-larvae-as-new-batch'],
    source: `${CUSTOM}; ${EMERGENCY_STUDY}`,
  },
  'job-done-on-another-day': { remedies: [], source: CUSTOM },
} as const satisfies Record<ObservationKind, RemedyRow>;

/** Under this share taken, new larvae are given in the empty cups. */
export const LOW_TAKE_SHARE = { value: 0.5, unit: 'share', range: null, source: CUSTOM, confidence: 'low' } as const;

/** Remedies for a poor take, likeliest cause first. */
export const LOW_TAKE_REMEDIES: readonly Remedy[] = [
  'give-new-larvae-as-new-batch',
  'look-for-hidden-queen',
  'destroy-own-cells',
  'feed-or-wait-for-flow',
  'add-bees-and-cover',
];
