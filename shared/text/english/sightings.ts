import type { ObservationKind } from '../../model/step.ts';

/** What a person says they saw; for lists, the slip dialog and contradictions. */
export const SIGHTING_WORDS = {
  'eggs-first-seen': { name: 'eggs seen for the first time', ask: 'The first eggs in the comb' },
  'larva-size': { name: 'larvae of a certain size', ask: 'How large the larvae are' },
  'larva-age-note': { name: 'age of the larvae', ask: 'How old the larvae are, by your own notes' },
  'cells-open': { name: 'cells still open', ask: 'The cells are all still open' },
  'cells-sealed': { name: 'cells sealed', ask: 'The cells are sealed' },
  'cells-browned': { name: 'cell tips browned', ask: 'The tips of the cells are brown and thin' },
  'emerged-hole': { name: 'a queen has emerged', ask: 'A cell with a round hole at its tip' },
  'queen-seen': { name: 'young queen seen', ask: 'A young queen' },
  'first-eggs': { name: 'first eggs of the young queen', ask: 'The first eggs of the young queen' },
  'sealed-brood': { name: 'sealed worker brood', ask: 'Sealed worker brood of the young queen' },
  'frame-not-drawn': { name: 'frame not drawn', ask: 'The frame is not drawn yet' },
  'comb-filled-with-nectar': { name: 'comb filled with nectar', ask: 'The comb is full of nectar' },
  'larvae-too-old': { name: 'larvae too old', ask: 'The larvae are too old to use' },
  'cells-torn-down': { name: 'cells torn down', ask: 'Cells torn down at the side' },
  'job-done-on-another-day': { name: 'job done on another day', ask: 'A job was done on another day' },
} as const satisfies Record<ObservationKind, { readonly name: string; readonly ask: string }>;
