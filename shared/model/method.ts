/** The ways of getting queen cells that the calendar knows. Names as in the trade; none is called after a person. */
export const METHODS = [
  'larva-grafting',
  'larva-grafting-double',
  'cut-comb-edge',
  'comb-strip',
  'flat-comb',
  'cell-punch',
  'caged-laying-plugs',
  'emergency-cells',
  'swarm-cells',
  'supersedure-cells',
] as const;
export type Method = (typeof METHODS)[number];

/** Whether the comb given to the breeder for a cut-comb batch was drawn already or only foundation strips. */
export const COMBS = ['drawn', 'foundation'] as const;
export type Comb = (typeof COMBS)[number];

/** How the builder is arranged. Each adds its own steps before the larvae are given. */
export const BUILDER_TYPES = [
  'queenless',
  'starter-then-finisher',
  'queenright-over-excluder',
  'divider-board',
  'queen-parked-above',
] as const;
export type BuilderType = (typeof BUILDER_TYPES)[number];

/** Mating boxes by their make-up, not by any make. */
export const BOX_TYPES = ['mini', 'half-frame', 'two-three-frame', 'four-six-frame'] as const;
export type BoxType = (typeof BOX_TYPES)[number];
