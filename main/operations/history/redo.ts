import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Result } from '../../../shared/kernel/result.ts';
import type { JournalStep } from '../../../shared/model/journal.ts';
import type { Desk } from '../operation.ts';

/** Does again what was taken back last; answers which step that was. */
export function redo({ workbook }: Desk): Result<JournalStep, Refusal> {
  return workbook.redo();
}
