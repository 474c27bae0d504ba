import type { z } from 'zod';
import type { CopyList, SetSecondPlace } from '../../../shared/contract/copies.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { CopyDesk } from './copy-desk.ts';

/** Where a second set of copies goes, such as a stick; null = nowhere. The newest copy is brought there at once. */
export function setSecondPlace(
  { keeper }: CopyDesk,
  { folder }: z.infer<typeof SetSecondPlace>,
): Result<CopyList, Refusal> {
  const set = keeper.copies.setSecondPlace(folder);
  return set.ok ? ok(keeper.copies.list()) : set;
}
