import type { BatchLine } from '../../../shared/contract/batches.ts';
import { batchLine } from '../batch-lines.ts';
import type { Desk } from '../operation.ts';

/** All batches, newest first. */
export function listBatches({ workbook, today }: Desk): readonly BatchLine[] {
  return workbook.tables.batches
    .all()
    .map((batch) => batchLine(workbook.tables, batch, today))
    .toSorted((a, b) => (a.larvaeGivenOn < b.larvaeGivenOn ? 1 : -1));
}
