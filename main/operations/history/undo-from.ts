import type { z } from 'zod';
import type { UndoFrom } from '../../../shared/contract/history.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Result } from '../../../shared/kernel/result.ts';
import type { JournalStep } from '../../../shared/model/journal.ts';
import type { Desk } from '../operation.ts';

/** Takes back a change and all that came after it, all or none; answers which ones, the latest first. */
export function undoFrom(
  { workbook }: Desk,
  { step }: z.infer<typeof UndoFrom>,
): Result<readonly JournalStep[], Refusal> {
  return workbook.undoFrom(step);
}
