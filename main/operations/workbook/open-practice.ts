import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { buildInvented } from './build-invented.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Opens the workbook to practise in, as it was left; the first time it is the made-up yard. */
export function openPractice(lifecycle: Lifecycle): Result<WorkbookState, Refusal> {
  const { keeper, version } = lifecycle;
  const opened = keeper.openPractice(version, (workbook) => buildInvented(workbook, lifecycle));
  return opened.ok ? ok(getWorkbookState(lifecycle)) : opened;
}
