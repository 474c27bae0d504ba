import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { RemoveWish } from '../../../shared/contract/season-plan.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';

/** Takes a wish out that was written down by mistake. */
export function removeWish({ workbook }: Desk, { wishId }: z.infer<typeof RemoveWish>): Result<null, Refusal> {
  const forWhom = workbook.tables.wishes.get(wishId)?.forWhom ?? null;
  return workbook.change({ did: 'remove-wish', forWhom }, ({ wishes }) => {
    if (!wishes.get(wishId)) return refuse({ kind: 'wish-missing', field: 'wishId' });
    wishes.remove(wishId);
    return ok(null);
  });
}
