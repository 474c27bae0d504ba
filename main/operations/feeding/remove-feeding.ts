import type { z } from 'zod';
import type { RemoveFeeding } from '../../../shared/contract/feeding.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Feeding } from '../../../shared/model/feeding.ts';
import type { Desk } from '../operation.ts';

/** Takes a feeding out that was none after all; undo and history keep it. */
export function removeFeeding(
  { workbook }: Desk,
  { feedingId }: z.infer<typeof RemoveFeeding>,
): Result<Feeding, Refusal> {
  const { tables } = workbook;
  const feeding = tables.feedings.get(feedingId);
  const place =
    feeding === null
      ? null
      : feeding.colonyId === null
        ? tables.boxes.get(feeding.boxId ?? '')
        : tables.colonies.get(feeding.colonyId);
  const step = { did: 'remove-feeding', places: place?.code ?? '', on: feeding?.fedOn ?? '' } as const;
  return workbook.change(step, ({ feedings }) => {
    if (!feeding) return refuse({ kind: 'feeding-missing' });
    feedings.remove(feedingId);
    return ok(feeding);
  });
}
