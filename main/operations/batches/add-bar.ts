import type { z } from 'zod';
import type { AddBar, BatchChanged } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';

/** One bar more, after the last. */
export function addBar(desk: Desk, { batchId, barId }: z.infer<typeof AddBar>): Result<BatchChanged, Refusal> {
  const naming = (batch: string, { bars }: Tables) =>
    ({ did: 'add-bar', batch, bar: bars.get(barId)?.number ?? null }) as const;
  return changeBatch(desk, naming, batchId, ({ bars }) => {
    const number = Math.max(0, ...bars.where({ batchId }).map((bar) => bar.number)) + 1;
    bars.insert({ id: barId, batchId, number });
    return ok([]);
  });
}
