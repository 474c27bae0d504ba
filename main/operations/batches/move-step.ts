import type { z } from 'zod';
import type { BatchChanged, MoveStep } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { stepOf, stillReadable } from './step-rules.ts';

/** Puts an open step on a day of the person's choice, inside its window: biology sets the window, not the person. */
export function moveStep(desk: Desk, input: z.infer<typeof MoveStep>): Result<BatchChanged, Refusal> {
  return changeBatch(desk, 'Move a step', input.batchId, (tables, batch) => {
    const dated = stepOf(tables, batch, input.step);
    if (!dated.ok) return dated;
    if (dated.value.doneOn !== null) return refuse({ kind: 'step-already-done', field: 'step', step: input.step });
    const { earliest, latest } = dated.value;
    const to = dayOfIso(input.movedTo);
    if (to < earliest || to > latest)
      return refuse({
        kind: 'move-past-window',
        field: 'movedTo',
        earliest: isoOfDay(earliest),
        latest: isoOfDay(latest),
      });
    for (const move of tables.stepMoves.where({ batchId: batch.id, step: input.step }))
      tables.stepMoves.remove(move.id);
    tables.stepMoves.insert(input);
    const unreadable = stillReadable(tables, batch);
    return unreadable ? refuse(unreadable) : ok([]);
  });
}
