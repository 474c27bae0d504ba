import type { z } from 'zod';
import type { BatchChanged, SetWarmth } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { stillReadable } from './step-rules.ts';

/** Notes how warm the sealed cells are kept: cooler cells ripen later. Null = in a hive. */
export function setWarmth(
  desk: Desk,
  { batchId, sealedCelsius }: z.infer<typeof SetWarmth>,
): Result<BatchChanged, Refusal> {
  const naming = (batch: string) => ({ did: 'set-warmth', batch, celsius: sealedCelsius }) as const;
  return changeBatch(desk, naming, batchId, (tables, batch) => {
    const warmed = { ...batch, sealedCelsius };
    tables.batches.update(warmed);
    const unreadable = stillReadable(tables, warmed);
    return unreadable ? refuse(unreadable) : ok([]);
  });
}
