import type { z } from 'zod';
import type { BatchChanged, MarkStep } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { earlyLookNotice, markRefusal, stillReadable } from './step-rules.ts';

/** Marks a step as done on a day. Later open steps follow; this one never moves again. */
export function markStep(desk: Desk, input: z.infer<typeof MarkStep>): Result<BatchChanged, Refusal> {
  const naming = (batch: string) => ({ did: 'mark-step', batch, step: input.step }) as const;
  return changeBatch(desk, naming, input.batchId, (tables, batch) => {
    const refusal = markRefusal(tables, batch, input);
    if (refusal) return refuse(refusal);
    const early = earlyLookNotice(tables, batch, input.step, input.doneOn);
    const known = tables.stepsDone.where({ batchId: batch.id, step: input.step })[0];
    if (known) tables.stepsDone.update(input);
    else tables.stepsDone.insert(input);
    for (const drop of tables.stepDrops.where({ batchId: batch.id, step: input.step }))
      tables.stepDrops.remove(drop.id);
    const unreadable = stillReadable(tables, batch);
    if (unreadable) return refuse(unreadable);
    const future = dayOfIso(input.doneOn) > desk.today;
    return ok([...early, ...(future ? [{ kind: 'day-in-future', field: 'doneOn', day: input.doneOn } as const] : [])]);
  });
}
