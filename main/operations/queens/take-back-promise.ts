import type { z } from 'zod';
import type { TakeBackPromise } from '../../../shared/contract/queens.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';

/** A promise is taken back: the queen is free again. History keeps that it was made. */
export function takeBackPromise(
  { workbook }: Desk,
  { promiseId }: z.infer<typeof TakeBackPromise>,
): Result<null, Refusal> {
  const promise = workbook.tables.queenPromises.get(promiseId);
  const queen = promise ? (workbook.tables.queens.get(promise.queenId)?.number ?? '') : '';
  return workbook.change({ did: 'take-back-promise', queen, to: promise?.promisedTo ?? '' }, ({ queenPromises }) => {
    if (!queenPromises.get(promiseId)) return refuse({ kind: 'promise-missing' });
    queenPromises.remove(promiseId);
    return ok(null);
  });
}
