import type { z } from 'zod';
import type { BatchDetail, BatchId } from '../../../shared/contract/batches.ts';
import type { Desk } from '../operation.ts';
import { readBatch } from './read-batch.ts';

/** One batch, or null when it is not in the workbook. */
export function getBatch(desk: Desk, { batchId }: z.infer<typeof BatchId>): BatchDetail | null {
  const { tables } = desk.workbook;
  const batch = tables.batches.get(batchId);
  return batch && readBatch(desk, tables, batch);
}
