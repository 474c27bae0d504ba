import type { z } from 'zod';
import type { BatchChanged, TakeUpStep } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';

/** A job that was not to be done is open again. */
export function takeUpStep(desk: Desk, { batchId, step }: z.infer<typeof TakeUpStep>): Result<BatchChanged, Refusal> {
  const naming = (batch: string) => ({ did: 'take-up-step', batch, step }) as const;
  return changeBatch(desk, naming, batchId, ({ stepDrops }) => {
    for (const drop of stepDrops.where({ batchId, step })) stepDrops.remove(drop.id);
    return ok([]);
  });
}
