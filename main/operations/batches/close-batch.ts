import type { z } from 'zod';
import type { BatchChanged, CloseBatch } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { timetableOf } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';

/** Closes a batch with a sentence to remember. Its boxes keep their cells and queens; only its jobs end. */
export function closeBatch(desk: Desk, input: z.infer<typeof CloseBatch>): Result<BatchChanged, Refusal> {
  return changeBatch(
    desk,
    (batch) => ({ did: 'close-batch', batch }),
    input.batchId,
    (tables, batch) => {
      const start = timetableOf(tables, batch).steps[0]?.earliest;
      if (start !== undefined && dayOfIso(input.closedOn) < start)
        return refuse({ kind: 'day-before-start', field: 'closedOn', day: input.closedOn, start: isoOfDay(start) });
      tables.batches.update({ ...batch, closedOn: input.closedOn, lesson: input.lesson });
      return ok([]);
    },
  );
}
