import type { z } from 'zod';
import type { OpenCopy, SafetyCopy } from '../../../shared/contract/copies.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { CopyDesk } from './copy-desk.ts';

/** Shows what is in a safety copy. Nothing can be saved in it; the workbook waits behind it. */
export function openCopy({ keeper }: CopyDesk, { copy }: z.infer<typeof OpenCopy>): Result<SafetyCopy, Refusal> {
  const opened = keeper.copies.look(copy);
  if (!opened.ok) return opened;
  const { lookingAt } = keeper.copies;
  return lookingAt === null ? refuse({ kind: 'copy-not-found', field: 'copy' }) : ok(lookingAt);
}
