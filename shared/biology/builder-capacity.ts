import type { Fact } from './fact.ts';
import { CUSTOM } from './sources.ts';

/** What one builder can bear. */
export const BUILDER_CAPACITY = {
  /** Usual ceiling of cells finished at once. The person's own setting goes before it. */
  cellsToFinish: {
    value: 20,
    unit: 'cells',
    range: [15, 20],
    source: 'de Bruyn 2015, Bee Craft; Hamdan, notes on rearing queens; Alley 1903',
    confidence: 'medium',
  },
  /** Cells a queenless starter begins well. */
  cellsToStart: {
    value: 45,
    unit: 'cells',
    range: [40, 60],
    source: 'Penn State Extension, cell-builder basics 2020; Phillips 1905',
    confidence: 'medium',
  },
  restDays: { value: 4, unit: 'days', range: [3, 7], source: CUSTOM, confidence: 'low' },
} as const satisfies Record<string, Fact>;
