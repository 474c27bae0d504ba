import type { z } from 'zod';
import type { ErrandTaken, TakeErrand } from '../../../shared/contract/errand.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { readErrand } from './errand-looks.ts';
import { applyLook } from './record-look.ts';

/**
 * Takes in the looks of an errand as one step. A look that was taken in before is never taken twice; where both sides saw
 * something different the person must have chosen, or nothing is written.
 */
export function takeErrand(desk: Desk, { file, choices }: z.infer<typeof TakeErrand>): Result<ErrandTaken, Refusal> {
  const read = readErrand(desk, file);
  if (!read.ok) return read;
  const { from, looks } = read.value;
  const open = looks.find(({ shown }) => shown.standing === 'doubtful' && choices[shown.lookId] === undefined);
  if (open) return refuse({ kind: 'errand-not-decided', field: 'choices', box: open.shown.box, on: open.shown.on });
  const fresh = looks.filter(({ shown }) => shown.standing === 'new');
  const theirs = looks.filter(({ shown }) => shown.standing === 'doubtful' && choices[shown.lookId] === 'theirs');
  const taken = [...fresh, ...theirs];
  return desk.workbook.change({ did: 'take-errand', from, looks: taken.length }, (tables) => {
    for (const { look, queen } of taken) {
      const { placementId: _there, ...typed } = look;
      const written = applyLook(desk, tables, { ...typed, queen });
      if (!written.ok) return written;
    }
    return ok({ added: fresh.length, changed: theirs.length, kept: looks.length - taken.length });
  });
}
