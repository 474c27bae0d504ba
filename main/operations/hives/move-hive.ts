import type { z } from 'zod';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import type { HiveMoved, MoveHive } from '../../../shared/contract/stock.ts';
import { dayOfIso, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Colony } from '../../../shared/model/colony.ts';
import type { ColonyMove } from '../../../shared/model/hive-record.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { handsOffOn, runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';

/**
 * A hive stands elsewhere from a day on. Its yard is changed with the move unless a later one is already written down;
 * a move in hands-off days is kept, with a notice.
 */
export function moveHive(desk: Desk, input: z.infer<typeof MoveHive>): Result<HiveMoved, Refusal> {
  const hive = desk.workbook.tables.colonies.get(input.colonyId)?.code ?? '';
  return desk.workbook.change({ did: 'move-hive', hive }, (tables) => {
    const colony = tables.colonies.get(input.colonyId);
    if (!colony) return refuse({ kind: 'hive-missing', field: 'colonyId' });
    if (input.toYardId !== null && !tables.yards.get(input.toYardId))
      return refuse({ kind: 'yard-not-found', field: 'yardId' });
    const known = tables.colonyMoves.get(input.id);
    const others = tables.colonyMoves.where({ colonyId: colony.id }).filter(({ id }) => id !== input.id);
    const move = { ...input, fromYardId: known ? known.fromYardId : cameFrom(colony, others, input.movedOn) };
    if (known) tables.colonyMoves.update(move);
    else tables.colonyMoves.insert(move);
    const isLast = others.every((one) => one.movedOn <= move.movedOn);
    if (isLast) tables.colonies.update({ ...colony, yardId: move.toYardId, place: move.place });
    return ok({ move, notices: moveNotices(desk, tables, colony, move.movedOn) });
  });
}

/** Where the hive stood before a day: where it was brought last, else where the next move took it from. */
function cameFrom(colony: Colony, moves: readonly ColonyMove[], on: IsoDay): string | null {
  const inOrder = moves.toSorted((a, b) => (a.movedOn < b.movedOn ? -1 : 1));
  const before = inOrder.findLast(({ movedOn }) => movedOn <= on);
  if (before) return before.toYardId;
  const next = inOrder.find(({ movedOn }) => movedOn > on);
  return next ? next.fromYardId : colony.yardId;
}

function moveNotices({ today }: Desk, tables: Tables, colony: Colony, movedOn: string): readonly Notice[] {
  const notices: Notice[] = [];
  const on = dayOfIso(movedOn);
  if (on > today) notices.push({ kind: 'day-in-future', field: 'movedOn', day: movedOn });
  const shut = handsOffOn(runningBatches(tables, today), on).find((one) => one.colonyId === colony.id);
  if (shut) notices.push({ kind: 'move-during-hands-off', hive: colony.code, until: isoOfDay(shut.span.to) });
  return notices;
}
