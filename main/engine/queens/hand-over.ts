import type { IsoDay } from '../../../shared/kernel/day.ts';
import { comparedName } from './same-name.ts';

/** A wish as far as handing over is concerned. */
export interface Wanted {
  readonly id: string;
  readonly forWhom: string | null;
  readonly queens: number;
  readonly wantedOn: IsoDay;
}

/** A queen that went to somebody on a day. */
export interface HandedOver {
  readonly to: string;
  readonly on: IsoDay;
}

/**
 * How many queens of each wish are handed over: those that went to the same name in the year of the wish. Several wishes
 * of one name and year are filled in the order of their days. A wish without a name has no entry.
 */
export function handedOverBy(wishes: readonly Wanted[], queens: readonly HandedOver[]): ReadonlyMap<string, number> {
  const left = new Map<string, number>();
  for (const { to, on } of queens) {
    const account = accountOf(to, on);
    left.set(account, (left.get(account) ?? 0) + 1);
  }
  const named = wishes.flatMap((wish) => (wish.forWhom === null ? [] : [{ ...wish, forWhom: wish.forWhom }]));
  return new Map(
    named
      .toSorted((a, b) => (a.wantedOn < b.wantedOn ? -1 : a.wantedOn > b.wantedOn ? 1 : 0))
      .map(({ id, forWhom, queens: wanted, wantedOn }) => {
        const account = accountOf(forWhom, wantedOn);
        const there = left.get(account) ?? 0;
        const taken = Math.min(there, wanted);
        left.set(account, there - taken);
        return [id, taken] as const;
      }),
  );
}

const YEAR_LETTERS = 4;

const accountOf = (name: string, day: IsoDay): string => `${day.slice(0, YEAR_LETTERS)} ${comparedName(name)}`;
