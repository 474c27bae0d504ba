import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { CopyDesk } from './copy-desk.ts';

/** Back from a safety copy to the workbook. */
export function leaveCopy({ keeper }: CopyDesk): Result<null, Refusal> {
  keeper.copies.leave();
  return ok(null);
}
