import type { z } from 'zod';
import type { BatchChanged, BatchId } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';

/** Opens a closed batch again: its open jobs are back on their days. The lesson stays. */
export function reopenBatch(desk: Desk, { batchId }: z.infer<typeof BatchId>): Result<BatchChanged, Refusal> {
  return changeBatch(
    desk,
    (batch) => ({ did: 'reopen-batch', batch }),
    batchId,
    (tables, batch) => {
      tables.batches.update({ ...batch, closedOn: null });
      return ok([]);
    },
  );
}
