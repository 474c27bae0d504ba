import type { z } from 'zod';
import type { BatchChanged, DropStep } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { dropRefusal } from './step-rules.ts';

/** Says of an open job that it will not be done, and why. It is not called done, and no other day moves. */
export function dropStep(desk: Desk, input: z.infer<typeof DropStep>): Result<BatchChanged, Refusal> {
  const naming = (batch: string) => ({ did: 'drop-step', batch, step: input.step }) as const;
  return changeBatch(desk, naming, input.batchId, (tables, batch) => {
    const refusal = dropRefusal(tables, batch, input.step);
    if (refusal) return refuse(refusal);
    for (const drop of tables.stepDrops.where({ batchId: batch.id, step: input.step }))
      tables.stepDrops.remove(drop.id);
    tables.stepDrops.insert(input);
    return ok([]);
  });
}
