import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { BeginWorkbook, WorkbookState } from '../../../shared/contract/workbook.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Makes a new workbook with the person's habits in it, and opens it. */
export function beginWorkbook(
  lifecycle: Lifecycle,
  { name, folder, habits }: z.infer<typeof BeginWorkbook>,
): Result<WorkbookState, Refusal> {
  const begun = lifecycle.keeper.begin(name, folder);
  if (!begun.ok) return begun;
  // Habits that could not be written are no reason to lose the workbook; what is typed next says what is wrong.
  begun.value.change({ did: 'begin-workbook' }, ({ settings }) => {
    for (const [key, value] of Object.entries(habits ?? {})) settings.put(key, value);
    return ok(null);
  });
  return ok(getWorkbookState(lifecycle));
}
