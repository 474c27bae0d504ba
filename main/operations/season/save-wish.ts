import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { SaveWish } from '../../../shared/contract/season-plan.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Wish } from '../../../shared/model/wish.ts';
import type { Desk } from '../operation.ts';

/** Writes down who wants queens, how many and by when; the same id again corrects it. */
export function saveWish({ workbook }: Desk, wish: z.infer<typeof SaveWish>): Result<Wish, Refusal> {
  return workbook.change({ did: 'save-wish', forWhom: wish.forWhom }, ({ wishes }) => {
    if (wishes.get(wish.id)) wishes.update(wish);
    else wishes.insert(wish);
    return ok(wish);
  });
}
