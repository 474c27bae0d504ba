import type { z } from 'zod';
import type { BatchChanged, RemoveObservation } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';

/** Takes a sighting back; the forecast is reckoned without it. */
export function removeObservation(
  desk: Desk,
  { batchId, observationId }: z.infer<typeof RemoveObservation>,
): Result<BatchChanged, Refusal> {
  const what = desk.workbook.tables.observations.get(observationId)?.what ?? null;
  return changeBatch(
    desk,
    (batch) => ({ did: 'remove-observation', batch, what }),
    batchId,
    ({ observations }) => {
      if (observations.get(observationId)?.batchId !== batchId) return refuse({ kind: 'observation-not-found' });
      observations.remove(observationId);
      return ok([]);
    },
  );
}
