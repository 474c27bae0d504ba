import { TRAIT_ROWS } from '../../../shared/biology/stock-traits.ts';
import type { StockTrait } from '../../../shared/model/stock.ts';

export interface ScoreSummary {
  /** Scores that stand behind the value. */
  readonly n: number;
  /** 1 to 4; null without any score. */
  readonly value: number | null;
  /** Whether they are enough to say anything. */
  readonly enough: boolean;
}

/** Many scores of one trait as one figure, by the rule of that trait: the mean, or for swarming the lowest. */
export function scoreSummary(trait: StockTrait, scores: readonly number[]): ScoreSummary {
  const { rule, fewest } = TRAIT_ROWS[trait];
  if (scores.length === 0) return { n: 0, value: null, enough: false };
  const sum = scores.reduce((total, score) => total + score, 0);
  const value = rule === 'mean' ? sum / scores.length : Math.min(...scores);
  return { n: scores.length, value, enough: scores.length >= fewest };
}
