import type { PromiseLine } from '../../shared/contract/queens.ts';
import type { Queen } from '../../shared/model/queen.ts';
import type { Wish } from '../../shared/model/wish.ts';
import { promiseStanding } from '../engine/queens/promise-standing.ts';
import { comparedName } from '../engine/queens/same-name.ts';
import type { Tables } from '../workbook/workbook.ts';

/** Every promise of a queen with what became of it, newest first. */
export function promiseLines(tables: Tables, queen: Queen): readonly PromiseLine[] {
  const promises = tables.queenPromises.where({ queenId: queen.id });
  if (promises.length === 0) return [];
  const moves = tables.queenMoves.where({ queenId: queen.id });
  return promises
    .toSorted((a, b) => (a.promisedOn < b.promisedOn ? 1 : -1))
    .map((promise) => {
      const wish = openWishOf(tables, promise.promisedTo);
      return {
        ...promise,
        standing: promiseStanding(promise, moves, queen.place),
        byWhen: promise.wantedOn ?? wish?.wantedOn ?? null,
      };
    });
}

/** The promise that binds her now, if one does. */
export const openPromise = (tables: Tables, queen: Queen): PromiseLine | null =>
  promiseLines(tables, queen).find(({ standing }) => standing === 'open') ?? null;

/** The wish of that name that is wanted first, of those not settled. */
function openWishOf(tables: Tables, name: string): Wish | null {
  const wishes = tables.wishes.where({ settledOn: null });
  return (
    wishes
      .filter(({ forWhom }) => forWhom !== null && comparedName(forWhom) === comparedName(name))
      .toSorted((a, b) => (a.wantedOn < b.wantedOn ? -1 : 1))[0] ?? null
  );
}
