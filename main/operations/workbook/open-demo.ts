import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { buildInvented } from './build-invented.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Opens the made-up yard, a file of its own, held at its own day. */
export function openDemo(lifecycle: Lifecycle): Result<WorkbookState, Refusal> {
  const { keeper, version } = lifecycle;
  const opened = keeper.openDemo(version, (workbook) => buildInvented(workbook, lifecycle));
  return opened.ok ? ok(getWorkbookState(lifecycle)) : opened;
}
