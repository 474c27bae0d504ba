import type { CopyList } from '../../../shared/contract/copies.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { CopyDesk } from './copy-desk.ts';

/** Back from a safety copy to the workbook. */
export function leaveCopy({ keeper }: CopyDesk): Result<CopyList, Refusal> {
  keeper.copies.leave();
  return ok(keeper.copies.list());
}
