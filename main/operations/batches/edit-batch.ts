import type { z } from 'zod';
import type { BatchChanged, EditBatch } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';

/** Note, lesson, and whether it was for practice. */
export function editBatch(
  desk: Desk,
  { batchId, ...changes }: z.infer<typeof EditBatch>,
): Result<BatchChanged, Refusal> {
  return changeBatch(
    desk,
    (batch) => ({ did: 'edit-batch', batch }),
    batchId,
    ({ batches }, batch) => {
      batches.update({ ...batch, ...changes });
      return ok([]);
    },
  );
}
