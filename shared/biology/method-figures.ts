import type { Method } from '../model/method.ts';
import type { Fact } from './fact.ts';
import {
  BEEBOOK_CAPACITY,
  CAGED_LAYING,
  CELL_PUNCH,
  COMB_STRIPS,
  CUSTOM,
  CUT_COMB,
  EMERGENCY_STUDY,
  FLAT_COMB,
} from './sources.ts';

/** How many cells a method usually comes to: larvae offered, or cells the bees begin. */
interface MethodFigures {
  readonly cells: Fact & { readonly range: readonly [number, number] };
}

const cells = (value: number, range: readonly [number, number], source: string, confidence: Fact['confidence']) => ({
  cells: { value, unit: 'cells' as const, range, source, confidence },
});

/** `value` is what the start form offers where the person has no habit of their own yet. */
export const METHOD_FIGURES = {
  'larva-grafting': cells(20, [15, 45], BEEBOOK_CAPACITY, 'high'),
  'larva-grafting-double': cells(20, [15, 45], BEEBOOK_CAPACITY, 'medium'),
  'cut-comb-edge': cells(10, [6, 12], CUT_COMB, 'medium'),
  'comb-strip': cells(12, [12, 20], COMB_STRIPS, 'medium'),
  'flat-comb': cells(20, [20, 30], FLAT_COMB, 'medium'),
  'cell-punch': cells(15, [10, 20], CELL_PUNCH, 'medium'),
  'caged-laying-plugs': cells(20, [20, 50], CAGED_LAYING, 'medium'),
  'emergency-cells': cells(20, [11, 49], EMERGENCY_STUDY, 'medium'),
  'swarm-cells': cells(10, [4, 30], CUSTOM, 'low'),
  'supersedure-cells': cells(2, [1, 5], CUSTOM, 'low'),
} as const satisfies Record<Method, MethodFigures>;
