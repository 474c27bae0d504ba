import type { Confidence } from '../model/step.ts';

/** One figure of the trade, with all one needs to judge it. */
export interface Fact {
  readonly value: number;
  readonly unit:
    | 'hours'
    | 'days'
    | 'celsius'
    | 'litres'
    | 'kilograms'
    | 'kilometres per hour'
    | 'cells'
    | 'colonies'
    | 'queens'
    | 'hour of day'
    | 'share';
  /** Lowest and highest figure met in the sources; null where they give none. */
  readonly range: readonly [number, number] | null;
  readonly source: string;
  readonly confidence: Confidence;
}
