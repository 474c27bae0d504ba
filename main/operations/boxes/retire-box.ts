import type { z } from 'zod';
import type { BoxesChanged, RetireBox } from '../../../shared/contract/boxes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';

/** Takes a box out of use; what happened in it stays. A box that holds something is freed first. */
export function retireBox(desk: Desk, { boxId, retiredOn }: z.infer<typeof RetireBox>): Result<BoxesChanged, Refusal> {
  const step = ({ boxes }: Tables) => ({ did: 'retire-box', box: boxes.get(boxId)?.code ?? '' }) as const;
  return desk.workbook.change(step, (tables) => {
    const box = tables.boxes.get(boxId);
    if (!box) return refuse({ kind: 'box-not-found', field: 'boxId', code: boxId });
    const held = tables.placements.where({ boxId, endedOn: null })[0];
    if (held) {
      const batch = tables.batches.get(held.batchId)?.code ?? '';
      return refuse({ kind: 'box-holds-a-cell', field: 'boxes', box: box.code, batch, since: held.placedOn });
    }
    tables.boxes.update({ ...box, retiredOn });
    const reader = new BoxReader(tables, desk.today);
    return ok({ boxes: [reader.line({ ...box, retiredOn })], notices: [] });
  });
}
