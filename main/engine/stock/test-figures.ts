import { STOCK_TEST_ROWS } from '../../../shared/biology/stock-traits.ts';
import type { StockTest } from '../../../shared/model/stock.ts';

/**
 * What one test says: pin and freeze test, the share cleared (0 to 1); mite wash, mites per 100 bees; mite fall, mites a
 * day; honey, kilograms. null where the number it is out of is not known.
 */
export function testFigure({ kind, counted, outOf }: Pick<StockTest, 'kind' | 'counted' | 'outOf'>): number | null {
  if (kind === 'honey') return counted;
  if (outOf === null) return null;
  return kind === 'mite-wash' ? (100 * counted) / outOf : counted / outOf;
}

/**
 * Hygienic by the strict rule: each of the two latest freeze tests above 95 in 100 within 24 hours. null with fewer than
 * two such tests. The test says nothing of the mites a colony will have.
 */
export function isStrictlyHygienic(
  tests: readonly Pick<StockTest, 'kind' | 'counted' | 'outOf' | 'hours'>[],
): boolean | null {
  const { fewest, share, hours } = STOCK_TEST_ROWS.freezeTests;
  const shares = tests
    .filter((test) => test.kind === 'freeze-test' && (test.hours === null || test.hours <= hours))
    .flatMap((test) => testFigure(test) ?? []);
  return shares.length < fewest ? null : shares.slice(-fewest).every((one) => one > share);
}

export interface HoneyStanding {
  readonly kilograms: number;
  /** Mean of the yard in the same season, this hive included, and how many hives it rests on. */
  readonly mean: number;
  readonly colonies: number;
  readonly enough: boolean;
}

/** A hive's honey beside the mean of its yard in one season. `all` holds one figure a hive, this one among them. */
export function honeyStanding(kilograms: number, all: readonly number[]): HoneyStanding {
  const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
  return { kilograms, mean, colonies: all.length, enough: all.length >= STOCK_TEST_ROWS.honeyColonies.fewest };
}
