import type { z } from 'zod';
import type { BoxesChanged, EndPlacement } from '../../../shared/contract/boxes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Placement, PlacementEnd } from '../../../shared/model/mating-box.ts';
import type { QueenPlace } from '../../../shared/model/queen.ts';
import type { Ids } from '../../ports/ports.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';
import { writeQueenMove } from '../queen-moves.ts';
import { keepTally } from '../tally-keeping.ts';

/** The queen was caught, the box failed or was united: the box is free again and the cell's story is complete. */
export function endPlacement(desk: Desk, input: z.infer<typeof EndPlacement>): Result<BoxesChanged, Refusal> {
  const step = (_: Tables, { boxes }: BoxesChanged) =>
    ({ did: 'end-placement', box: boxes[0]?.code ?? '', reason: input.reason }) as const;
  return desk.workbook.change(step, (tables) => {
    const placement = tables.placements.get(input.placementId);
    if (!placement) return refuse({ kind: 'placement-not-found' });
    if (input.endedOn < placement.placedOn)
      return refuse({ kind: 'look-before-placing', field: 'endedOn', placedOn: placement.placedOn });
    tables.placements.update({ ...placement, endedOn: input.endedOn, endReason: input.reason });
    moveQueen(tables, desk.ids, placement, input);
    dropLooksAgain(tables, placement.boxId);
    keepTally(tables, placement.batchId);
    const box = tables.boxes.get(placement.boxId);
    const reader = new BoxReader(tables, desk.today);
    return ok({ boxes: box ? [reader.line(box)] : [], notices: [] });
  });
}

const QUEEN_GOES: Readonly<Record<PlacementEnd, QueenPlace | null>> = {
  caught: 'caged',
  failed: 'lost',
  united: 'in-hive',
  'shaken-out': 'lost',
  'cell-taken-back': null,
  other: null,
};

/** A queen with a number leaves the box with the placement; where she goes next is the person's to say. */
function moveQueen(tables: Tables, ids: Ids, placement: Placement, { reason, endedOn }: z.infer<typeof EndPlacement>) {
  const place = QUEEN_GOES[reason];
  const queen = tables.queens.where({ placementId: placement.id, place: 'in-box' })[0];
  if (!queen || !place) return;
  const nowhere = { colonyId: null, goneTo: null, way: null, price: null, note: null };
  writeQueenMove(tables, ids, queen, { id: ids.next(), queenId: queen.id, movedOn: endedOn, place, ...nowhere });
}

/** A free box waits for no look. */
function dropLooksAgain(tables: Tables, boxId: string): void {
  for (const look of tables.followUps.where({ boxId, doneOn: null })) tables.followUps.remove(look.id);
}
