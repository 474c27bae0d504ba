import type { z } from 'zod';
import type { BoxesChanged, EndPlacement } from '../../../shared/contract/boxes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';
import { dropLooksAgain, leaveEndedBox } from '../queen-moves.ts';
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
    const { unitedWith } = input;
    if (unitedWith !== undefined && !tables.colonies.get(unitedWith))
      return refuse({ kind: 'hive-missing', field: 'colonyId' });
    const ended = { ...placement, endedOn: input.endedOn, endReason: input.reason };
    tables.placements.update(ended);
    leaveEndedBox(tables, desk.ids, ended, unitedWith ?? null);
    dropLooksAgain(tables, placement.boxId);
    keepTally(tables, placement.batchId);
    const box = tables.boxes.get(placement.boxId);
    const reader = new BoxReader(tables, desk.today);
    return ok({ boxes: box ? [reader.line(box)] : [], notices: [] });
  });
}
