import type { z } from 'zod';
import type { ClashList, ListClashes } from '../../../shared/contract/clashes.ts';
import type { Desk } from '../operation.ts';
import { clashesOf, clashList, readClashes } from '../read-clashes.ts';

/** What is ahead and cannot go as planned: of one batch, or of all. */
export function listClashes(desk: Desk, { batchId }: z.infer<typeof ListClashes>): ClashList {
  const clashes = readClashes(desk);
  return clashList(desk.workbook.tables, batchId === null ? clashes : clashesOf(clashes, batchId));
}
