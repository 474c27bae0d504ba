import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { OpenWorkbook, WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Opens a workbook that exists; the one open until now is closed only when this succeeds. */
export function openWorkbook(
  lifecycle: Lifecycle,
  { file }: z.infer<typeof OpenWorkbook>,
): Result<WorkbookState, Refusal> {
  const opened = lifecycle.keeper.open(file);
  return opened.ok ? ok(getWorkbookState(lifecycle)) : opened;
}
