import type { StockTrait } from '../model/stock.ts';

const beebook = (section: string) => `Büchler et al. 2013, COLOSS BEEBOOK, J. Apic. Res. 52(1), section ${section}`;

export interface TraitRow {
  /** How many scores become one: their mean, or the lowest of them. */
  readonly rule: 'mean' | 'lowest';
  /** Scores below which nothing can be said. */
  readonly fewest: number;
  readonly source: string;
}

/** The open scales of four steps, 4 the best; the words of each step are in shared/text/english/stock. */
export const TRAIT_ROWS = {
  gentleness: { rule: 'mean', fewest: 4, source: `${beebook('3.3.2')}; words of steps 2 and 1 from memory` },
  calmness: { rule: 'mean', fewest: 4, source: `${beebook('3.3.2')}; words of steps 3 to 1 from memory` },
  /** A colony that swarmed once has swarmed: the lowest score of the season counts. Supersedure is no swarming. */
  swarming: { rule: 'lowest', fewest: 4, source: beebook('3.3.3') },
} as const satisfies Record<StockTrait, TraitRow>;

export const STOCK_TEST_ROWS = {
  /** Cells of young pupae pierced; cleared cells are counted after the same hours in all hives. */
  pinTests: { fewest: 2, cells: 50, hours: [7, 15], source: beebook('3.3.4.3') },
  /** Hygienic by the strict rule: more than this share removed within 24 hours in each of two tests. */
  freezeTests: { fewest: 2, share: 0.95, hours: 24, source: beebook('3.3.4.2') },
  /** Bees in a washed sample. */
  washedBees: {
    usual: 300,
    source: 'Mississippi State University Extension; USDA-ARS as quoted at gilroybeekeepers.org',
  },
  /** Colonies in a yard from which a mean of honey is worth comparing with. */
  honeyColonies: { fewest: 10, source: beebook('3.3.1') },
} as const;
