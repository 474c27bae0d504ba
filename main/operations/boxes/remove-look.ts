import type { z } from 'zod';
import type { BoxesChanged, RemoveLook } from '../../../shared/contract/boxes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { BoxLook } from '../../../shared/model/look.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';
import { keepTally } from '../tally-keeping.ts';

/**
 * Takes a look out that was typed by mistake. The box stands as its other looks say; a queen who got her number with it
 * keeps it, as she does when the look is corrected.
 */
export function removeLook(desk: Desk, { lookId }: z.infer<typeof RemoveLook>): Result<BoxesChanged, Refusal> {
  const { tables: before } = desk.workbook;
  const look = before.boxLooks.get(lookId);
  const box = look && before.boxes.get(look.boxId);
  const step = { did: 'remove-look', box: box?.code ?? '', on: look?.lookedOn ?? isoOfDay(desk.today) } as const;
  return desk.workbook.change(step, (tables) => {
    if (!look || !box) return refuse({ kind: 'look-missing' });
    tables.boxLooks.remove(lookId);
    reopenLookAgain(tables, look);
    const placement = look.placementId === null ? null : tables.placements.get(look.placementId);
    if (placement) keepTally(tables, placement.batchId);
    return ok({ boxes: [new BoxReader(tables, desk.today).line(box)], notices: [] });
  });
}

/** The look that was wanted again, and that this one answered, is wanted still; unless a later look answers it too. */
function reopenLookAgain(tables: Tables, { boxId, placementId, lookedOn, result }: BoxLook): void {
  const isHeld = placementId !== null && tables.placements.get(placementId)?.endedOn === null;
  if (result === 'not-looked' || !isHeld) return;
  const isSeenLater = tables.boxLooks
    .where({ boxId })
    .some((look) => look.lookedOn > lookedOn && look.result !== 'not-looked');
  if (isSeenLater) return;
  for (const wanted of tables.followUps.where({ boxId, doneOn: lookedOn }))
    tables.followUps.update({ ...wanted, doneOn: null, answer: null });
}
