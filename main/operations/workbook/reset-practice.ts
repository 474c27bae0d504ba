import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { buildInvented } from './build-invented.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Sets the practice workbook back to its start. Refused, and nothing touched, while any other workbook is open. */
export function resetPractice(lifecycle: Lifecycle): Result<WorkbookState, Refusal> {
  const { keeper, version } = lifecycle;
  const reset = keeper.resetPractice(version, (workbook) => buildInvented(workbook, lifecycle));
  return reset.ok ? ok(getWorkbookState(lifecycle)) : reset;
}
