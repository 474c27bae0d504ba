import type { z } from 'zod';
import type { KeepDraft } from '../../../shared/contract/drafts.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { DraftDesk } from './draft-desk.ts';

/** Keeps what is half typed, so that it is still there after a crash or a power cut; or forgets it once it is saved. */
export function keepDraft({ keeper }: DraftDesk, { key, text }: z.infer<typeof KeepDraft>): Result<null, Refusal> {
  const { current } = keeper;
  if (current === null) return refuse({ kind: 'no-workbook-open' });
  keeper.drafts.keep(current.file, key, text);
  return ok(null);
}
