import type { BoxType, BuilderType, Comb, Method } from '../../model/method.ts';

interface Named {
  readonly name: string;
  readonly line: string;
}

export const METHOD_WORDS = {
  'larva-grafting': {
    name: 'Larva grafting',
    line: 'Young larvae are lifted from their comb into cups and given to a builder. Exact, and as many as you like; needs good eyes and a steady hand.',
  },
  'larva-grafting-double': {
    name: 'Larva grafting, double',
    line: 'Larvae are transferred twice, a day apart: the first only fill the cups with jelly. Slightly heavier queens for twice the work.',
  },
  'cut-comb-edge': {
    name: 'Cut-comb edge',
    line: 'A comb with young larvae is trimmed, and the builder draws cells along its edge. No fine tool, no touching of larvae; six to twelve cells.',
  },
  'comb-strip': {
    name: 'Comb strip',
    line: 'A comb with young larvae is cut into strips one cell wide, which hang cells-down in queenless bees.',
  },
  'flat-comb': {
    name: 'Flat comb',
    line: 'A comb of just-hatched larvae is laid face down over a queenless builder. Many cells with little handling; the ages are mixed.',
  },
  'cell-punch': {
    name: 'Cell punch',
    line: 'Single cells are punched out of a comb with larva and food untouched, and fixed to a bar.',
  },
  'caged-laying-plugs': {
    name: 'Caged laying on plugs',
    line: 'The queen lays in a closed box with removable cell floors. No larva is touched and every age is known.',
  },
  'emergency-cells': {
    name: 'Emergency cells',
    line: 'The queen is taken away or the colony divided, and the bees raise new queens from their own brood.',
  },
  'swarm-cells': {
    name: 'Swarm cells',
    line: 'Cells that a colony preparing to swarm has built are shared out. Cheap; but it favours colonies that swarm.',
  },
  'supersedure-cells': {
    name: 'Supersedure cells',
    line: 'The colony replaces its queen by itself. Mostly watched, seldom used.',
  },
} as const satisfies Record<Method, Named>;

export const COMB_WORDS = {
  drawn: { name: 'drawn comb', line: 'Laid within a day: larvae four days after it went in.' },
  foundation: {
    name: 'foundation strips',
    line: 'Drawn first, then laid: larvae seven to eight days after it went in.',
  },
} as const satisfies Record<Comb, Named>;

export const BUILDER_TYPE_WORDS = {
  queenless: { name: 'queenless throughout', line: 'One colony without a queen starts and finishes the cells.' },
  'starter-then-finisher': {
    name: 'starter, then finisher',
    line: 'A box of shaken nurse bees starts the cells, a strong colony finishes them.',
  },
  'queenright-over-excluder': {
    name: 'queenright, over an excluder',
    line: 'The queen stays below an excluder; cells are raised above.',
  },
  'divider-board': {
    name: 'with a divider board',
    line: 'A slide cuts the upper part off from the queen for a day, then opens again.',
  },
  'queen-parked-above': {
    name: 'queen parked above',
    line: 'The queen’s boxes stand above a screen for a day or two, then return below an excluder.',
  },
} as const satisfies Record<BuilderType, Named>;

export const BOX_TYPE_WORDS = {
  mini: { name: 'mini box', line: 'Three to five small combs, about a cup of bees.' },
  'half-frame': { name: 'half-frame box', line: 'Four to eight half combs, often divided in two; lasts the season.' },
  'two-three-frame': { name: '2–3-frame nucleus', line: 'Full-sized combs, one with brood.' },
  'four-six-frame': { name: '4–6-frame nucleus', line: 'A small colony; the queen may stay in it.' },
} as const satisfies Record<BoxType, Named>;
