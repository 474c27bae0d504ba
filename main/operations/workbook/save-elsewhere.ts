import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { SaveElsewhere, WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** When the file can no longer be written: all that is saved goes into a new file in another folder, which then is open. */
export function saveElsewhere(
  lifecycle: Lifecycle,
  { folder }: z.infer<typeof SaveElsewhere>,
): Result<WorkbookState, Refusal> {
  const saved = lifecycle.keeper.saveElsewhere(folder);
  return saved.ok ? ok(getWorkbookState(lifecycle)) : saved;
}
