import type { z } from 'zod';
import type { BatchChanged, MoveStep } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { addDays, dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { inUseOnItsDays, moveRefusal, movesWholeBatch, stillReadable } from './step-rules.ts';

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
    if (!wholeBatch) tables.stepMoves.insert(input);
    else {
      const days = dayOfIso(input.movedTo) - dayOfIso(batch.anchorOn);
      tables.batches.update({ ...batch, anchorOn: input.movedTo });
      // What the person put on a day of its own keeps its distance from the beginning.
      for (const move of tables.stepMoves.where({ batchId: batch.id }))
        tables.stepMoves.update({ ...move, movedTo: isoOfDay(addDays(dayOfIso(move.movedTo), days)) });
    }
    const moved = tables.batches.get(batch.id) ?? batch;
    const after = stillReadable(tables, moved) ?? (wholeBatch ? inUseOnItsDays(tables, moved) : null);
    return after ? refuse(after) : ok([]);
  });
}
