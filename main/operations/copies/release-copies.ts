import type { CopyList } from '../../../shared/contract/copies.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { CopyDesk } from './copy-desk.ts';

/** The person says go on: old safety copies may go again. */
export function releaseCopies({ keeper }: CopyDesk): Result<CopyList, Refusal> {
  keeper.copies.release();
  return ok(keeper.copies.list());
}
