import type { z } from 'zod';
import type { RestoreCopy, Restored } from '../../../shared/contract/copies.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Result } from '../../../shared/kernel/result.ts';
import type { CopyDesk } from './copy-desk.ts';

/** Goes back to a safety copy. The workbook as it was until now stays beside it, and no old copy goes until released. */
export function restoreCopy(
  { keeper }: CopyDesk,
  { copy, folder }: z.infer<typeof RestoreCopy>,
): Result<Restored, Refusal> {
  return keeper.copies.restore(copy, folder);
}
