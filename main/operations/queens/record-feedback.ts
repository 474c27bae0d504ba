import type { z } from 'zod';
import type { RecordFeedback } from '../../../shared/contract/queens.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';

type Feedback = z.infer<typeof RecordFeedback>;

/** What the person who received a queen told of her; the same id again corrects it. */
export function recordFeedback({ workbook }: Desk, feedback: Feedback): Result<Feedback, Refusal> {
  const number = workbook.tables.queens.get(feedback.queenId)?.number ?? '';
  return workbook.change({ did: 'record-feedback', queen: number }, ({ queens, queenFeedback }) => {
    if (!queens.get(feedback.queenId)) return refuse({ kind: 'queen-missing' });
    if (queenFeedback.get(feedback.id)) queenFeedback.update(feedback);
    else queenFeedback.insert(feedback);
    return ok(feedback);
  });
}
