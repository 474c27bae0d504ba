import type { z } from 'zod';
import type { BatchChanged, UnmarkStep } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';

/** Takes a done mark back; the step is open again. */
export function unmarkStep(desk: Desk, { batchId, step }: z.infer<typeof UnmarkStep>): Result<BatchChanged, Refusal> {
  return changeBatch(
    desk,
    (batch) => ({ did: 'unmark-step', batch, step }),
    batchId,
    ({ stepsDone }) => {
      for (const mark of stepsDone.where({ batchId, step })) stepsDone.remove(mark.id);
      return ok([]);
    },
  );
}
