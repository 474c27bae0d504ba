import { dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import type { Id } from '../../shared/kernel/id.ts';
import type { Placement, PlacementEnd } from '../../shared/model/mating-box.ts';
import type { Queen, QueenPlace } from '../../shared/model/queen.ts';
import type { QueenMove } from '../../shared/model/queen-story.ts';
import { type DatedCheck, introductionChecks } from '../engine/queens/introduction-checks.ts';
import type { Ids } from '../ports/ports.ts';
import type { Tables } from '../workbook/workbook.ts';
import { keepTally } from './tally-keeping.ts';

/**
 * Writes where a queen went: the move itself, her place as it is now, and the checks that follow. Checks still open from
 * her last place are forecasts that will not come, so they go.
 */
export function writeQueenMove(tables: Tables, ids: Ids, queen: Queen, move: QueenMove): Queen {
  if (tables.queenMoves.get(move.id)) tables.queenMoves.update(move);
  else tables.queenMoves.insert(move);
  const latest = tables.queenMoves
    .where({ queenId: queen.id })
    .toSorted((a, b) => (a.movedOn < b.movedOn ? -1 : a.movedOn > b.movedOn ? 1 : 0))
    .at(-1);
  if (latest?.id !== move.id) return queen;
  const { place, colonyId, goneTo } = move;
  const now: Queen = {
    ...queen,
    place,
    goneTo,
    colonyId: place === 'in-hive' ? colonyId : null,
    boxId: place === 'in-box' ? queen.boxId : null,
  };
  tables.queens.update(now);
  dropOpenChecks(tables, queen.id);
  if (now.colonyId !== null) addChecks(tables, ids, now, introductionChecks(move.way, dayOfIso(move.movedOn)));
  return now;
}

export function dropOpenChecks(tables: Tables, queenId: string): void {
  for (const check of tables.followUps.where({ queenId, doneOn: null })) tables.followUps.remove(check.id);
}

export function addChecks(
  tables: Tables,
  ids: Ids,
  queen: Pick<Queen, 'id' | 'colonyId'>,
  checks: readonly DatedCheck[],
): void {
  for (const { what, dueOn, latestOn } of checks)
    tables.followUps.insert({
      id: ids.next(),
      what,
      dueOn: isoOfDay(dueOn),
      latestOn: isoOfDay(latestOn),
      queenId: queen.id,
      boxId: null,
      colonyId: queen.colonyId,
      doneOn: null,
      answer: null,
      note: null,
    });
}

/** "Unknown" is said where she is not in the box any more and nothing tells where she went. */
const QUEEN_GOES: Readonly<Record<PlacementEnd, QueenPlace>> = {
  caught: 'caged',
  failed: 'lost',
  united: 'in-hive',
  'shaken-out': 'lost',
  'cell-taken-back': 'unknown',
  other: 'unknown',
};

/**
 * A queen with a number leaves the box when her placement ends; where she goes next is the person's to say.
 * @param unitedWith the hive the box was united with, where it was said.
 */
export function leaveEndedBox(
  tables: Tables,
  ids: Ids,
  { id, endedOn, endReason }: Placement,
  unitedWith: Id | null = null,
): void {
  const queen = tables.queens.where({ placementId: id, place: 'in-box' })[0];
  if (!queen || endReason === null || endedOn === null) return;
  const place = QUEEN_GOES[endReason];
  const nowhere = { goneTo: null, way: null, price: null, note: null };
  const colonyId = place === 'in-hive' ? unitedWith : null;
  writeQueenMove(tables, ids, queen, {
    id: ids.next(),
    queenId: queen.id,
    movedOn: endedOn,
    place,
    colonyId,
    ...nowhere,
  });
}

/** Leaving her box completes the cell's story: caught, or failed where she is dead or lost. */
export function freeHerBox(
  tables: Tables,
  { placementId }: Queen,
  { place, movedOn }: Pick<QueenMove, 'place' | 'movedOn'>,
): void {
  if (placementId === null || place === 'in-box') return;
  const placement = tables.placements.get(placementId);
  if (!placement || placement.endedOn !== null || movedOn < placement.placedOn) return;
  const endReason = place === 'dead' || place === 'lost' ? 'failed' : 'caught';
  tables.placements.update({ ...placement, endedOn: movedOn, endReason });
  dropLooksAgain(tables, placement.boxId);
  keepTally(tables, placement.batchId);
}

/** A free box waits for no look. */
export function dropLooksAgain(tables: Tables, boxId: string): void {
  for (const look of tables.followUps.where({ boxId, doneOn: null })) tables.followUps.remove(look.id);
}
