import type { z } from 'zod';
import type { BatchChanged, RecordLoss } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { type LossFacts, lossesByReason } from '../../engine/yield/losses-by-reason.ts';
import { lossFacts } from '../batch-losses.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';

/** Says why cells or queens of a batch were lost at a stage. The same reason again corrects it; 0 takes it back. */
export function recordLoss(desk: Desk, input: z.infer<typeof RecordLoss>): Result<BatchChanged, Refusal> {
  const { batchId, stage, reason, cells } = input;
  const naming = (batch: string) => ({ did: 'record-loss', batch, stage, reason, cells }) as const;
  return changeBatch(desk, naming, batchId, (tables) => {
    const facts = lossFacts(tables, batchId);
    const others = facts.losses.filter((one) => one.stage !== stage || one.reason !== reason);
    const refusal = cells === 0 ? null : refusalOf({ ...facts, losses: [...others, input] }, input);
    if (refusal) return refuse(refusal);
    for (const loss of tables.losses.where({ batchId, stage, reason })) tables.losses.remove(loss.id);
    if (cells > 0) tables.losses.insert(input);
    return ok([]);
  });
}

/** There must be a loss to explain, and no more may be explained than was lost. */
function refusalOf(facts: LossFacts, { stage }: z.infer<typeof RecordLoss>): Refusal | null {
  const lost = lossesByReason([facts]).find((one) => one.stage === stage);
  if (!lost || lost.lost === 0) return { kind: 'nothing-lost', field: 'cells', stage };
  if (lost.tooMany === 0) return null;
  const explained = lost.lost + lost.tooMany;
  return { kind: 'more-reasons-than-lost', field: 'cells', lost: lost.lost, explained };
}
