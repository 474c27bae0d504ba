import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { OpenWorkbook, WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Shows a workbook that is open in another window or program, without changing it; asked again, as it is by then. */
export function lookAtWorkbook(
  lifecycle: Lifecycle,
  { file }: z.infer<typeof OpenWorkbook>,
): Result<WorkbookState, Refusal> {
  const opened = lifecycle.keeper.lookAt(file);
  return opened.ok ? ok(getWorkbookState(lifecycle)) : opened;
}
