import { afterCount, JEFFREYS, probabilityGreater } from './beta-belief.ts';
import type { BatchCount } from './group-rates.ts';

/** So sure must it be before two bars of one batch are said to differ: the best and the worst of several always look apart. */
const SURE = 0.99;

/**
 * Numbers of the best and the worst bar of one batch, where they differ by more than luck; else null. Bars of a batch share
 * their larvae, builder and weather, so plain counts may be compared; batches may not (see groupRates).
 */
export function barsApart(bars: readonly BatchCount[]): { readonly better: number; readonly worse: number } | null {
  const ranked = bars
    .map(({ successes, of }, bar) => ({ bar, of, share: successes / of }))
    .filter(({ of }) => of > 0)
    .toSorted((a, b) => b.share - a.share);
  const [better, worse] = [ranked[0]?.bar, ranked.at(-1)?.bar];
  const [one, other] = [bars[better ?? -1], bars[worse ?? -1]];
  if (better === undefined || worse === undefined || better === worse || !one || !other) return null;
  const sure = probabilityGreater(afterCount(JEFFREYS, one), afterCount(JEFFREYS, other));
  return sure >= SURE ? { better, worse } : null;
}
