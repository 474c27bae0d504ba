import type { z } from 'zod';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import type { HiveMoved, MoveHive } from '../../../shared/contract/stock.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Colony } from '../../../shared/model/colony.ts';
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
    const move = { ...input, fromYardId: known ? known.fromYardId : colony.yardId };
    if (known) tables.colonyMoves.update(move);
    else tables.colonyMoves.insert(move);
    const later = tables.colonyMoves.where({ colonyId: colony.id }).some((one) => one.movedOn > move.movedOn);
    if (!later) tables.colonies.update({ ...colony, yardId: move.toYardId, place: move.place });
    return ok({ move, notices: moveNotices(desk, tables, colony, move.movedOn) });
  });
}

function moveNotices({ today }: Desk, tables: Tables, colony: Colony, movedOn: string): readonly Notice[] {
  const notices: Notice[] = [];
  const on = dayOfIso(movedOn);
  if (on > today) notices.push({ kind: 'day-in-future', field: 'movedOn', day: movedOn });
  const shut = handsOffOn(runningBatches(tables, today), on).find((one) => one.colonyId === colony.id);
  if (shut) notices.push({ kind: 'look-during-hands-off', box: colony.code, until: isoOfDay(shut.span.to) });
  return notices;
}
