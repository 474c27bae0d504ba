import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { QueenPlace } from '../../../shared/model/queen.ts';
import type { PromiseStanding } from '../../../shared/model/queen-promise.ts';
import { comparedName } from './same-name.ts';

/** A promise as far as its keeping is concerned. */
export interface Promised {
  readonly promisedTo: string;
  readonly promisedOn: IsoDay;
}

/** Where the queen went on a day, and to whom; null = nobody was named. */
export interface PromisedMove {
  readonly movedOn: IsoDay;
  readonly place: QueenPlace;
  readonly goneTo: string | null;
}

const WITH_OTHERS: readonly QueenPlace[] = ['given', 'sold'];
const NO_MORE: readonly QueenPlace[] = ['dead', 'lost', 'unknown'];

/**
 * What became of a promise by the moves of its queen, in any order. The first time she is given or sold on or after the
 * day of the promise decides: to that name or to nobody named it is kept, to another it is not. Without that she is still
 * promised, unless her place is no longer known or she is dead.
 * @param place where she is now.
 */
export function promiseStanding(promise: Promised, moves: readonly PromisedMove[], place: QueenPlace): PromiseStanding {
  const gone = moves
    .filter((move) => WITH_OTHERS.includes(move.place) && move.movedOn >= promise.promisedOn)
    .toSorted((a, b) => (a.movedOn < b.movedOn ? -1 : a.movedOn > b.movedOn ? 1 : 0))[0];
  if (gone)
    return gone.goneTo === null || comparedName(gone.goneTo) === comparedName(promise.promisedTo) ? 'kept' : 'not-kept';
  return NO_MORE.includes(place) || WITH_OTHERS.includes(place) ? 'not-kept' : 'open';
}
