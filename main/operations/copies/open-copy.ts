import type { z } from 'zod';
import type { OpenCopy } from '../../../shared/contract/copies.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { CopyDesk } from './copy-desk.ts';

/** Shows what is in a safety copy. Nothing can be saved in it; the workbook waits behind it. */
export function openCopy({ keeper }: CopyDesk, { copy }: z.infer<typeof OpenCopy>): Result<null, Refusal> {
  const opened = keeper.copies.look(copy);
  return opened.ok ? ok(null) : opened;
}
