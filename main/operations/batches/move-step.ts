import type { z } from 'zod';
import type { BatchChanged, MoveStep } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { moveRefusal, movesWholeBatch, stillReadable } from './step-rules.ts';

/** Puts an open step on a day of the person's choice, inside its window: biology sets the window, not the person. */
export function moveStep(desk: Desk, input: z.infer<typeof MoveStep>): Result<BatchChanged, Refusal> {
  const naming = (batch: string) => ({ did: 'move-step', batch, step: input.step }) as const;
  return changeBatch(desk, naming, input.batchId, (tables, batch) => {
    const refusal = moveRefusal(tables, batch, input);
    if (refusal) return refuse(refusal);
    const wholeBatch = movesWholeBatch(tables, batch, input.step);
    for (const move of tables.stepMoves.where({ batchId: batch.id, step: input.step }))
      tables.stepMoves.remove(move.id);
    for (const drop of tables.stepDrops.where({ batchId: batch.id, step: input.step }))
      tables.stepDrops.remove(drop.id);
    if (wholeBatch) tables.batches.update({ ...batch, anchorOn: input.movedTo });
    else tables.stepMoves.insert(input);
    const unreadable = stillReadable(tables, tables.batches.get(batch.id) ?? batch);
    return unreadable ? refuse(unreadable) : ok([]);
  });
}
