import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Closes the open workbook; closing when none is open is no mistake. */
export function closeWorkbook(lifecycle: Lifecycle): Result<WorkbookState, Refusal> {
  lifecycle.keeper.close();
  return ok(getWorkbookState(lifecycle));
}
