import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { BeginWorkbook, WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Makes a new workbook and opens it. */
export function beginWorkbook(
  lifecycle: Lifecycle,
  { name, folder }: z.infer<typeof BeginWorkbook>,
): Result<WorkbookState, Refusal> {
  const begun = lifecycle.keeper.begin(name, folder);
  return begun.ok ? ok(getWorkbookState(lifecycle)) : begun;
}
