import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Result } from '../../../shared/kernel/result.ts';
import type { JournalStep } from '../../../shared/model/journal.ts';
import type { Desk } from '../operation.ts';

/** Takes the last step back; answers which one that was. */
export function undo({ workbook }: Desk): Result<JournalStep, Refusal> {
  return workbook.undo();
}
